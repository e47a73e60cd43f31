// Starts the service worker, and tells when a newer version of the screens is ready to take over.

/**
 * @param onNewer  called when a newer version waits; its argument loads the page anew with it
 */
export async function registerWorker(onNewer: (takeOver: () => void) => void): Promise<void> {
  // Browsers give workers to pages from this machine or over TLS only.
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  const registration = await navigator.serviceWorker.register("/sw.js");
  const tell = (waiting: ServiceWorker | null) => {
    // The first worker of all takes no old one's place.
    if (!waiting || !navigator.serviceWorker.controller) return;
    onNewer(() => {
      navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), {once: true});
      waiting.postMessage("take over");
    });
  };
  tell(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const {installing} = registration;
    installing?.addEventListener("statechange", () => {
      if (installing.state === "installed") tell(installing);
    });
  });
}
