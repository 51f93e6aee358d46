import Link from '@docusaurus/Link';
import { FoodRules } from '../food/FoodRules.tsx';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';

/** The rules on food contact, one by one, in our words. */
export default function FoodRulesPage() {
  return (
    <Page
      title="Rules on food contact"
      description="What American and European rules ask of what touches food, whom they bind, where they are silent on wood, and which copy was read."
      width="text"
    >
      <h1>Rules on food contact</h1>
      <p className="lead">
        Plain words for what we read: not the text of any law, and not legal advice. Editions change; read the current
        one. What follows for a board stands on the page on <Link to="/how-to/food-contact">food and the label</Link>.
      </p>
      <Anchored as="h2" id="us">
        United States
      </Anchored>
      <FoodRules market="us" />
      <Anchored as="h2" id="eu">
        European Union
      </Anchored>
      <FoodRules market="eu" />
    </Page>
  );
}
