// The address of a garment's history.
import {useParams} from "wouter";
import {HistoryScreen} from "./history-screen.tsx";

export function HistoryRoute() {
  const {id = ""} = useParams<{id: string}>();
  return <HistoryScreen key={id} id={id} />;
}
