import { useEffect, useState } from "react";

/** The voices of the device itself that speak a language; others would send the words elsewhere. */
const localVoices = (tag: string): readonly SpeechSynthesisVoice[] =>
  typeof speechSynthesis === "undefined"
    ? []
    : speechSynthesis.getVoices().filter(({ localService, lang }) => localService && lang.startsWith(tag));

/** The first local voice for a language; `null` while there is none. Voices may come some time after the page. */
export function useLocalVoice(tag: string): SpeechSynthesisVoice | null {
  const [voice, setVoice] = useState(() => localVoices(tag)[0] ?? null);
  useEffect(() => {
    if (typeof speechSynthesis === "undefined") return;
    const device = speechSynthesis;
    const look = () => setVoice(localVoices(tag)[0] ?? null);
    device.addEventListener?.("voiceschanged", look);
    return () => device.removeEventListener?.("voiceschanged", look);
  }, [tag]);
  return voice;
}

/** Speaks a caption whenever it changes, one utterance each; what is being said is broken off by the next one, or by a pause. */
export function useSpokenCaption(text: string, voice: SpeechSynthesisVoice | null, isPlaying: boolean): void {
  useEffect(() => {
    if (!voice || !isPlaying || text === "") return;
    const utterance = new SpeechSynthesisUtterance(text);
    utterance.voice = voice;
    utterance.lang = voice.lang;
    const device = speechSynthesis;
    device.speak(utterance);
    return () => device.cancel();
  }, [text, voice, isPlaying]);
}
