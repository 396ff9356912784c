/** Made by the build: where the face is that has the Japanese characters of the app's words, by weight. */
declare module "virtual:japanese-face/*" {
  export const url: string;
}
