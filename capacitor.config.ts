import type { CapacitorConfig } from "@capacitor/cli";

const config: CapacitorConfig = {
  appId: "org.tetherline.app",
  appName: "Tetherline",
  webDir: "dist/app",
  // A hub lets in the pages of these two origins, and no other: `src/hub/routes/native-shells.ts`.
  server: { hostname: "localhost", androidScheme: "https", iosScheme: "capacitor" },
};

// The Capacitor CLI reads the default export.
export default config;
