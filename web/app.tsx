// The frame around every screen: the bar of screens, the screen that the address asks for, and the way in when a passphrase is needed.
import {Suspense, useEffect, useState} from "react";
import {Route, Switch} from "wouter";
import {getJson, type About} from "./api.ts";
import {registerWorker} from "./offline/register.ts";
import {WaitingNote} from "./offline/waiting-note.tsx";
import {routes} from "./routes.ts";
import {Bar} from "./ui/bar.tsx";
import {Button} from "./ui/button.tsx";
import {Guard} from "./ui/guard.tsx";
import {SignIn} from "./ui/sign-in.tsx";
import {Walk} from "./ui/walk.tsx";

export function App() {
  const [locked, setLocked] = useState(false);
  const [demo, setDemo] = useState(false);
  const [takeOver, setTakeOver] = useState<(() => void) | null>(null);
  useEffect(() => {
    // Without a server the screens go on with what this device keeps.
    getJson<About>("/api/about").then(
      ({open, demo: isDemo}) => {
        setLocked(!open);
        setDemo(isDemo);
      },
      () => undefined,
    );
    void registerWorker((now) => setTakeOver(() => now)).catch(() => undefined);
  }, []);
  if (locked) return <SignIn onIn={() => setLocked(false)} />;
  return (
    <>
      <a className="skip" href="#screen">Skip to the screen</a>
      <Bar />
      {takeOver && (
        <p className="newer" role="status">
          A newer version of these screens is ready. <Button look="quiet" onClick={takeOver}>Load it</Button>
        </p>
      )}
      <WaitingNote />
      {demo && <Walk />}
      <div id="screen" tabIndex={-1}>
        <Guard>
          <Suspense fallback={<p className="waiting" role="status">One moment …</p>}>
            <Switch>
              {routes.map(([path, Screen]) => <Route key={path} path={path} component={Screen} />)}
              <Route>
                <main className="empty"><h1>Nothing here</h1><p>This address has no screen. The bar above leads to all of them.</p></main>
              </Route>
            </Switch>
          </Suspense>
        </Guard>
      </div>
    </>
  );
}
