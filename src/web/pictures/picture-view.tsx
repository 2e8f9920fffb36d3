// An own picture as it is printed: its parts in their colours inside an ink line.
import { OWN_UNITS, type OwnPicture } from '../../figures/index.ts';

export function PictureView({
  picture,
  label,
}: {
  readonly picture: OwnPicture;
  readonly label: string;
}) {
  const half = OWN_UNITS / 2 + 15;
  return (
    <svg
      className="own-picture"
      viewBox={`${-half} ${-half} ${2 * half} ${2 * half}`}
      role="img"
      aria-label={label}
    >
      <path className="own-picture-line" d={picture.outline} />
      {picture.parts.map(([fill, path, isEvenOdd]) => (
        <path key={fill + path} d={path} fill={fill} fillRule={isEvenOdd ? 'evenodd' : 'nonzero'} />
      ))}
    </svg>
  );
}
