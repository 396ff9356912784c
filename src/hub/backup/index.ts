export { backUpStore } from "./back-up-store.ts";
export { serveBackups } from "./backup-socket.ts";
