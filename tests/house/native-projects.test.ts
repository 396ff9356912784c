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

  it("ask hubs over TLS alone, trust what the user of the tablet trusts, and leave no copy on a second tablet", () => {
    const manifest = text("android/app/src/main/AndroidManifest.xml");
    expect(manifest).toContain('android:networkSecurityConfig="@xml/network_security_config"');
    expect(manifest).toContain('android:allowBackup="false"');
    const network = text("android/app/src/main/res/xml/network_security_config.xml");
    expect(network).toContain('cleartextTrafficPermitted="false"');
    expect(network).toContain('<certificates src="user" />');
    expect(text("android/app/src/main/res/xml/data_extraction_rules.xml")).toContain("<device-transfer>");
    expect(text("ios/App/App/Info.plist")).toContain("<key>NSLocalNetworkUsageDescription</key>");
    expect(text("ios/App/App/Info.plist")).not.toContain("NSAllowsArbitraryLoads");
  });

  it("rest on the native parts of the installed versions", () => {
    const { devDependencies } = JSON.parse(text("package.json")) as {
      readonly devDependencies: Readonly<Record<string, string>>;
    };
    const versions = ["core", "android", "ios", "cli"].map((part) => devDependencies[`@capacitor/${part}`]);
    expect(versions).not.toContain(undefined);
    expect(new Set(versions).size).toBe(1);
    expect(text("android/capacitor.settings.gradle")).toContain("node_modules/@capacitor/android/capacitor");
    expect(text("ios/App/Podfile")).toContain("node_modules/@capacitor/ios");
  });
});
