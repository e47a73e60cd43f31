// The entry of the screens: draws the app, and starts what works without a server.
import {StrictMode} from "react";
import {createRoot} from "react-dom/client";
import {Router} from "wouter";
import {App} from "./app.tsx";
import {keepSending} from "./offline/keep-sending.ts";
import {fetchScreen} from "./routes.ts";
import {setLamp, lampChosen} from "./ui/lamp.ts";
import "./ui/fonts.css";
import "./ui/tokens.css";
import "./ui/base.css";
import "./ui/parts.css";

setLamp(lampChosen());
const root = createRoot(document.getElementById("root")!);
/** Whatever comes of it: a screen that cannot be fetched says so where it is shown. */
const whenHere = (address: string, then: () => void) => {
  const coming = fetchScreen(address);
  if (coming) void coming.then(then, then);
  else then();
};
whenHere(location.pathname, () =>
  root.render(
    <StrictMode>
      <Router aroundNav={(go, to, how) => whenHere(to, () => go(to, how))}><App /></Router>
    </StrictMode>,
  ),
);

keepSending();
