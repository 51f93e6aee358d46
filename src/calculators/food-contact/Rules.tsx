import { useLinks } from '../view/links.tsx';

/** Where the rules stand whole. */
export function Rules() {
  const { Link } = useLinks();
  return (
    <p>
      What each rule says of wood, its numbers and whom it binds: <Link to="/reference/food-rules">rules on food</Link>.
    </p>
  );
}
