// The entry of the screens: draws the app, and starts what works without a server.
import {StrictMode} from "react";
import {createRoot} from "react-dom/client";
import {App} from "./app.tsx";
import {sendWaiting} from "./offline/outbox.ts";
import {setLamp, lampChosen} from "./ui/lamp.ts";
import "./ui/fonts.css";
import "./ui/tokens.css";
import "./ui/base.css";
import "./ui/parts.css";

setLamp(lampChosen());
createRoot(document.getElementById("root")!).render(<StrictMode><App /></StrictMode>);

// What was saved while the server was out of reach goes out as soon as it is back.
const send = () => void sendWaiting().catch(() => undefined);
addEventListener("online", send);
send();
