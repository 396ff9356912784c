import { IonContent, IonHeader, IonPage, IonTitle, IonToolbar } from "@ionic/react";

/** The first screen: procedures and walks on this device. */
export function ShelfPage() {
  return (
    <IonPage>
      <IonHeader>
        <IonToolbar>
          <IonTitle>Tetherline</IonTitle>
        </IonToolbar>
      </IonHeader>
      <IonContent>
        <main>
          <h1>Shelf</h1>
          <p>No procedure is on this device yet.</p>
        </main>
      </IonContent>
    </IonPage>
  );
}
