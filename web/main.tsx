// The entry of the screens: draws the app, and starts what works without a server.
import {StrictMode} from "react";
import {createRoot} from "react-dom/client";
import {App} from "./app.tsx";
import {keepSending} from "./offline/keep-sending.ts";
import {setLamp, lampChosen} from "./ui/lamp.ts";
import "./ui/fonts.css";
import "./ui/tokens.css";
import "./ui/base.css";
import "./ui/parts.css";

setLamp(lampChosen());
createRoot(document.getElementById("root")!).render(<StrictMode><App /></StrictMode>);

keepSending();
