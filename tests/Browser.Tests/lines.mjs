// Reports each test as a line of JSON: its name, and what went wrong or null.
export default async function* lines(events) {
  for await (const { type, data } of events) {
    if ((type === 'test:pass' || type === 'test:fail') && data.nesting === 0) {
      const { cause } = data.details.error ?? {};
      yield `${JSON.stringify({ name: data.name, fault: type === 'test:pass' ? null : String(cause?.stack ?? cause ?? data.details.error) })}\n`;
    }
  }
}
