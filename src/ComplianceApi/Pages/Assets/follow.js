// The page of an audit that has not ended: shows how far it is, ends it when asked to, and shows the whole page once it has ended.
import { follow } from '/assets/progress.js';

follow(document.getElementById('going').dataset.audit, () => location.reload());
