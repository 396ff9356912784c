import { useEffect, useState } from "react";
import { words } from "../words/index.ts";
import "./first-screen.css";
import { ShelfPage } from "./pages/index.ts";
import { errorWords } from "./parts/index.ts";
import { type Services, ServicesContext, ShowPageContext } from "./session/index.ts";
import { useShelfNews } from "./shelf/index.ts";

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
  return (
    <ServicesContext value={opened}>
      <ShowPageContext value={onShow}>
        <div className="first-screen">
          <main>
            <ShelfPage services={services} />
          </main>
        </div>
      </ShowPageContext>
    </ServicesContext>
  );
}
