/** The bench needs the procedure and the planner, so it is loaded when a job begins, not with the page. */
export async function startFrom(draft?: Readonly<Record<string, string>>, copyOf?: string): Promise<string> {
  const { startJob } = await import('$lib/session/open.ts');
  return startJob(draft, copyOf);
}
