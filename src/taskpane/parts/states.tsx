import { Component } from "react";
import type { ReactNode } from "react";

/** States of the whole pane; plain elements, since they may stand outside the theme. */
export function Stopped({ title, text, children }: { title: string; text: string; children?: ReactNode }) {
  return (
    <div role="alert" style={{ padding: 16, font: "14px/1.45 system-ui, sans-serif" }}>
      <h1 style={{ fontSize: 16, margin: "0 0 8px" }}>{title}</h1>
      <p style={{ margin: 0 }}>{text}</p>
      {children}
    </div>
  );
}

/** A fault of the pane itself: said plainly, with a way on; the sheet is not touched by it. */
export class Guard extends Component<{ children: ReactNode }, { fault?: Error }> {
  override state: { fault?: Error } = {};
  static getDerivedStateFromError(fault: Error) {
    return { fault };
  }
  override render() {
    const { fault } = this.state;
    if (!fault) return this.props.children;
    return (
      <Stopped title="The pane has stopped" text={`${fault.message}. The sheet is unharmed.`}>
        <p>
          <button type="button" onClick={() => this.setState({ fault: undefined })}>
            Try again
          </button>
        </p>
      </Stopped>
    );
  }
}
