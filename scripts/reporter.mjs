// Prints the plain closing line "N passed, N failed". A suite whose hook failed counts as a failure, not as skipped tests.
export default class PlainReporter {
  onTestRunEnd(modules, errors) {
    let passed = 0;
    let failed = errors.length;
    let skipped = 0;
    for (const module of modules) {
      let own = 0;
      for (const test of module.children.allTests()) {
        const {state} = test.result();
        if (state === "passed") passed++;
        else if (state === "failed") own++;
        else skipped++;
      }
      failed += own;
      if (module.state() === "failed" && own === 0) failed++;
    }
    setTimeout(() => console.log(`${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ""}`), 0);
  }
}
