import { useEffect, useLayoutEffect, useRef, useState } from "react";
import { words } from "../words/index.ts";
import "./first-screen.css";
import { ShelfPage } from "./pages/index.ts";
import { errorWords } from "./parts/index.ts";
import { type Services, ServicesContext, ShowPageContext } from "./session/index.ts";
import { keepShelfPlace, useShelfNews } from "./shelf/index.ts";

interface FirstScreenProps {
  readonly services: () => Promise<Services>;
  /** Shows another page. */
  readonly onShow: (path: string) => void;
}

/** The shelf as the app begins with it: it is drawn, and can be tapped, before the store of the device is open. */
export function FirstScreen({ services, onShow }: FirstScreenProps) {
  const [opened, setOpened] = useState<Services | null>(null);
  const [, setNews] = useShelfNews();
  useEffect(() => {
    let isOver = false;
    services().then(
      (ready) => !isOver && setOpened(ready),
      (error: unknown) => {
        const message = [words("parts/did-not-work", { why: errorWords(error) })];
        if (!isOver) setNews((news) => ({ ...news, message }));
      },
    );
    return () => {
      isOver = true;
    };
  }, [services, setNews]);
  const scroller = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = scroller.current;
    return () => keepShelfPlace(element?.scrollTop ?? 0);
  }, []);
  return (
    <ServicesContext value={opened}>
      <ShowPageContext value={onShow}>
        <div ref={scroller} className="first-screen">
          <main>
            <ShelfPage services={services} />
          </main>
        </div>
      </ShowPageContext>
    </ServicesContext>
  );
}
