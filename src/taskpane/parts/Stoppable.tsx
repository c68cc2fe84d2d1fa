import { Button, Field as FieldBox, ProgressBar } from "@fluentui/react-components";
import { useShared } from "./styles";

/** How far a long piece of work is, and the way to end it. */
export function Stoppable({ work, share, stop }: { work: string; share: number; stop(): void }) {
  const s = useShared();
  return (
    <div className={s.row}>
      <FieldBox label={`${work}: ${Math.round(share * 100)} %`} style={{ flexGrow: 1 }}>
        <ProgressBar value={share} />
      </FieldBox>
      <Button size="small" onClick={stop}>
        Stop
      </Button>
    </div>
  );
}
