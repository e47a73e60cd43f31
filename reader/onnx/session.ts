// One model run by the ONNX runtime in WebAssembly, in Node and in a browser alike.

/** The little of the runtime that is used. */
export interface Runtime {
  readonly env: {wasm: {wasmBinary?: ArrayBufferLike | Uint8Array; wasmPaths?: string | {mjs?: URL | string; wasm?: URL | string}; numThreads?: number; simd?: boolean | string}; logLevel?: string};
  readonly InferenceSession: {create(model: Uint8Array, options: object): Promise<RuntimeSession>};
  readonly Tensor: new (type: "float32", data: Float32Array, dims: readonly number[]) => unknown;
}

interface RuntimeSession {
  readonly inputNames: readonly string[];
  readonly outputNames: readonly string[];
  run(feeds: Record<string, unknown>): Promise<Record<string, {readonly data: unknown; readonly dims: readonly number[]; dispose?(): void}>>;
  release(): Promise<void>;
}

export interface Output {
  readonly data: Float32Array;
  readonly dims: readonly number[];
}

export interface Session {
  /** Runs the model on one picture of planes; one after the other, however many are asked for at once. */
  run(data: Float32Array, dims: readonly number[]): Promise<Output>;
  close(): Promise<void>;
}

/** Makes a model ready. */
export async function openSession(runtime: Runtime, model: Uint8Array): Promise<Session> {
  const session = await runtime.InferenceSession.create(model, {executionProviders: ["wasm"], graphOptimizationLevel: "all", logSeverityLevel: 3});
  let last: Promise<unknown> = Promise.resolve();
  const run = async (data: Float32Array, dims: readonly number[]): Promise<Output> => {
    const outputs = await session.run({[session.inputNames[0]!]: new runtime.Tensor("float32", data, dims)});
    const output = outputs[session.outputNames[0]!]!;
    return {data: output.data as Float32Array, dims: output.dims};
  };
  return {
    run(data, dims) {
      const mine = last.then(() => run(data, dims));
      last = mine.catch(() => undefined);
      return mine;
    },
    async close() {
      await last;
      await session.release();
    },
  };
}
