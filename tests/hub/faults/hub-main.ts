import "../../machine/speak-english.ts";
import { startHub } from "../../../src/hub/index.ts";

/** A whole hub in a process of its own, for faults: `hub-main <data> <port> [<engine>]`. */
const [data = "", port = "0", engine = ""] = process.argv.slice(2);

await startHub(
  {
    port: Number(port),
    host: "127.0.0.1",
    data,
    certificate: null,
    key: null,
    engine: engine === "" ? null : engine,
    name: "hub under test",
    plain: false,
    newOwnerCode: false,
    upstream: null,
    upstreamCode: null,
    app: "/nowhere",
  },
  {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
  },
);
