import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import config from "../../capacitor.config.ts";

const text = (path: string) => readFileSync(path, "utf8");

describe("the native projects", () => {
  it("carry the identity of the configuration", () => {
    expect(text("android/app/build.gradle")).toContain(`applicationId "${config.appId}"`);
    expect(text("android/app/src/main/res/values/strings.xml")).toContain(
      `<string name="app_name">${config.appName}</string>`,
    );
    expect(text("ios/App/App.xcodeproj/project.pbxproj")).toContain(
      `PRODUCT_BUNDLE_IDENTIFIER = ${config.appId};`,
    );
    expect(text("ios/App/App/Info.plist")).toContain(`<string>${config.appName}</string>`);
  });

  it("are given the folder that the build writes", async () => {
    const { app } = await import("../../vite.config.ts");
    expect(app.build?.outDir).toBe(`../../${config.webDir}`);
  });

  it("rest on the native parts of the installed versions", () => {
    const { dependencies, devDependencies } = JSON.parse(text("package.json")) as Record<
      "dependencies" | "devDependencies",
      Record<string, string>
    >;
    const versions = ["core", "android", "ios"].map((part) => dependencies[`@capacitor/${part}`]);
    expect(new Set([...versions, devDependencies["@capacitor/cli"]]).size).toBe(1);
    expect(text("android/capacitor.settings.gradle")).toContain("node_modules/@capacitor/android/capacitor");
    expect(text("ios/App/Podfile")).toContain("node_modules/@capacitor/ios");
  });
});
