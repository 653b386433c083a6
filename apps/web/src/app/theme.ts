import { colorsTuple, createTheme, type VariantColorsResolver } from '@mantine/core';

const SHADES = [
  '#e0ecee',
  '#c4dadd',
  '#9cc2c8',
  '#6fa5ae',
  '#4a8a95',
  '#2c707d',
  '#175d6a',
  '#0f5562',
  '#0b4f5c',
  '#083b45',
] as const;

/** Every button takes the house's own inks, so that both themes keep their contrast. */
const houseColours: VariantColorsResolver = ({ variant, color }) => {
  const ink = color === 'danger' ? 'var(--danger)' : 'var(--accent)';
  if (variant === 'filled') {
    const words = color === 'danger' ? 'var(--on-danger)' : 'var(--on-accent)';
    const hover = color === 'danger' ? 'var(--danger)' : 'var(--accent-strong)';
    return { background: ink, hover, color: words, border: '1px solid transparent' };
  }
  if (variant === 'subtle') {
    return { background: 'transparent', hover: 'var(--wash)', color: ink, border: '1px solid transparent' };
  }
  return { background: 'var(--raised)', hover: 'var(--wash)', color: ink, border: '1px solid var(--rule-strong)' };
};

/** The component library's settings; colours come from `styles/tokens.css`. */
export const theme = createTheme({
  primaryColor: 'petrol',
  primaryShade: { light: 8, dark: 8 },
  autoContrast: true,
  colors: { petrol: SHADES, danger: colorsTuple('#9c2f00') },
  fontFamily: 'var(--words)',
  fontFamilyMonospace: 'var(--numbers)',
  defaultRadius: 3,
  cursorType: 'pointer',
  respectReducedMotion: true,
  variantColorResolver: houseColours,
  components: {
    Button: { defaultProps: { variant: 'outline', size: 'md', 'data-button': true } },
    TextInput: { defaultProps: { size: 'md' } },
    Textarea: { defaultProps: { size: 'md' } },
    NativeSelect: { defaultProps: { size: 'md' } },
    Checkbox: { defaultProps: { size: 'md' } },
    PasswordInput: { defaultProps: { size: 'md' } },
    Modal: { defaultProps: { centered: true, closeButtonProps: { 'aria-label': 'Close', size: 44 } } },
  },
});
