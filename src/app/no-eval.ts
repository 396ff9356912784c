import { config } from "zod";

// The hub's content security policy forbids code made at run time. Zod tries it while a schema is made, and the try
// alone is reported as a violation; so it is told not to before any schema is: this file is the first to be imported.
config({ jitless: true });
