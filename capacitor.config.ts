import type { CapacitorConfig } from "@capacitor/cli";

const config: CapacitorConfig = {
  appId: "org.tetherline.app",
  appName: "Tetherline",
  webDir: "dist/app",
};

// The Capacitor CLI reads the default export.
export default config;
