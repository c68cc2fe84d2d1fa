import { MessageBar, MessageBarActions, MessageBarBody, MessageBarTitle } from "@fluentui/react-components";
import type { ReactNode } from "react";

interface Props {
  intent: "info" | "success" | "warning" | "error";
  title?: string;
  children: ReactNode;
  actions?: ReactNode;
}

/** A message in its place; read out when it comes. */
export function Notice({ intent, title, children, actions }: Props) {
  return (
    <MessageBar
      intent={intent}
      layout="multiline"
      politeness={intent === "error" ? "assertive" : "polite"}
      style={{ flexShrink: 0 }}
    >
      <MessageBarBody style={{ whiteSpace: "normal" }}>
        {title && <MessageBarTitle>{title}</MessageBarTitle>}
        {title && " "}
        {children}
      </MessageBarBody>
      {actions && <MessageBarActions>{actions}</MessageBarActions>}
    </MessageBar>
  );
}
