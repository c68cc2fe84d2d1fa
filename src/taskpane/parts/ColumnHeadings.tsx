/** The heading row of a table. */
export const ColumnHeadings = ({ texts }: { texts: readonly string[] }) => (
  <thead>
    <tr>
      {texts.map((text, i) => (
        <th key={i} scope="col">
          {text}
        </th>
      ))}
    </tr>
  </thead>
);
