/** Hands a page over as a file, as a browser saves a download. */
export function savePage(name: string, page: string): void {
  const address = URL.createObjectURL(new Blob([page], { type: "text/html" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}
