/** Attributes that link a control to its hint and fault, so that screen readers announce them. */
export function describedBy(
  id: string,
  hint: string | undefined,
  fault: string | undefined,
): { readonly 'aria-invalid': 'true' | undefined; readonly 'aria-describedby': string | undefined } {
  const ids = [hint ? `${id}-hint` : '', fault ? `${id}-fault` : ''].filter((one) => one !== '');
  return {
    'aria-invalid': fault ? 'true' : undefined,
    'aria-describedby': ids.length === 0 ? undefined : ids.join(' '),
  };
}
