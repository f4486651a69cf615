export default function Home() {
  return <main>Bedplate</main>;
}
