// The main screen: when a garment was made, how sure that is, and why.
export function ExamineScreen() {
  return <main />;
}
