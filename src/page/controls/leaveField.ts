/** Takes what is being typed into a field, as leaving the field does; false where no field is being typed into. */
export const leaveField = (): boolean => {
  const field = document.activeElement;
  if (!(field instanceof HTMLInputElement)) return false;
  field.blur();
  field.focus();
  return true;
};
