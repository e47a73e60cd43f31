// The wordings of what can be wrong with a request itself, to be read in a row.
import type {Problem} from "../engine/index.ts";

export const notJson = (reason: string): Problem => ({
  code: "server/not-json", at: "body", what: `the body is not JSON (${reason})`, why: "nothing can be read from it", fix: "send the input as JSON in UTF-8",
});

export const wrongMedia = (given: string, wanted: readonly string[]): Problem => ({
  code: "server/wrong-media", at: "Content-Type", what: given === "" ? "it is not said what the body is" : `the body is said to be ${given}`, why: `only ${wanted.join(", ")} can be read here`, fix: `send the header Content-Type: ${wanted[0]}`,
});

export const tooLarge = (most: number): Problem => ({
  code: "server/too-large", at: "body", what: `the body is larger than ${Math.round(most / 1e6)} MB`, why: "so much is never needed here, and would crowd out others", fix: "send less at a time",
});

export const nothingHere = (path: string): Problem => ({
  code: "server/nothing-here", at: path, what: "there is nothing at this address", why: "no route of the interface leads here", fix: "look at /api/openapi.json for what there is",
});

export const wrongMethod = (path: string, allowed: readonly string[]): Problem => ({
  code: "server/wrong-method", at: path, what: "this cannot be done here", why: `the address takes ${allowed.join(", ")} alone`, fix: "look at /api/openapi.json for what there is",
});

export const strangeHost = (host: string): Problem => ({
  code: "server/strange-host", at: "Host", what: `the server is not called “${host.slice(0, 80)}”`, why: "another site could reach your rack by giving its own name to this machine", fix: "use the address that ticking serve printed, or start it with --name for a name of your own",
});

export const strangeOrigin = (): Problem => ({
  code: "server/strange-origin", at: "Origin", what: "the request comes from another site", why: "another site must not read or change your rack", fix: "use the screens that this server hands out",
});

export const notSignedIn = (): Problem => ({
  code: "server/not-signed-in", at: "session", what: "you are not signed in", why: "this rack is served to others than this machine, so it asks for its passphrase", fix: "sign in with the passphrase",
});

export const wrongPassphrase = (): Problem => ({
  code: "server/wrong-passphrase", at: "passphrase", what: "that is not the passphrase", why: "only those who know it see the rack", fix: "try again; capitals and blanks count",
});

export const noPassphrase = (): Problem => ({
  code: "server/no-passphrase", at: "session", what: "this rack asks for no passphrase", why: "it is served to this machine alone", fix: "go on without signing in",
});

export const tooManyTries = (seconds: number): Problem => ({
  code: "server/too-many-tries", at: "passphrase", what: "there were too many wrong passphrases", why: "guessing must take too long to be worth while", fix: `wait ${seconds} seconds, then try again`,
});

export const ourFault = (): Problem => ({
  code: "server/our-fault", at: "server", what: "something went wrong inside", why: "this is a fault of the program, not of your input", fix: "try again; if it stays, report what you did where you got ticking",
});

export const noScreens = (): Problem => ({
  code: "server/no-screens", at: "/", what: "the screens have not been built", why: "there is nothing to show in the browser", fix: "run npm run build once, then load the page again",
});
