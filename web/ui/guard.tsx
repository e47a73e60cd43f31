// Keeps a fault in one screen from taking the bar and the way out with it.
import {Component, type ReactNode} from "react";
import {Button} from "./button.tsx";

interface State {
  readonly fault: unknown;
}

export class Guard extends Component<{readonly children: ReactNode}, State> {
  override state: State = {fault: null};

  static getDerivedStateFromError(fault: unknown): State {
    return {fault};
  }

  override render() {
    if (this.state.fault === null) return this.props.children;
    return (
      <main className="empty">
        <h1>This screen broke</h1>
        <p>That is a fault of ours. What was typed is kept on this device.</p>
        <p className="quiet">{this.state.fault instanceof Error ? this.state.fault.message : String(this.state.fault)}</p>
        <Button look="main" onClick={() => location.reload()}>Load it again</Button>
      </main>
    );
  }
}
