// What the parts of the screen say to those who listen, in languages that the app speaks and their library does not.

type Words = Readonly<Record<string, string>>;

/** By language and region as the library names them, then by part. What stands in braces is filled in. */
export const PARTS_SAID: Readonly<Record<string, Readonly<Record<string, Words>>>> = {
  'hi-IN': {
    overlays: { dismiss: 'बंद करें' },
    menu: {
      longPressMessage: 'मेनू खोलने के लिए देर तक दबाएँ, या Alt और नीचे का तीर दबाएँ',
    },
    spinbutton: { Empty: 'खाली' },
    numberfield: {
      decrease: 'घटाएँ: {fieldLabel}',
      increase: 'बढ़ाएँ: {fieldLabel}',
      numberField: 'संख्या की जगह',
    },
    grid: {
      deselectedItem: '{item}: चुना हुआ नहीं।',
      select: 'चुनें',
      selectedCount: 'चुने हुए: {count}।',
      selectedAll: 'सब चुने गए।',
      selectedItem: '{item}: चुना गया।',
      longPressToSelect: 'चुनने के लिए देर तक दबाएँ।',
    },
    dnd: {
      dragItem: 'खींचें: {itemText}',
      dragSelectedItems: 'चुने हुए {count} खींचें',
      dragDescriptionKeyboard: 'खींचना शुरू करने के लिए Enter दबाएँ।',
      dragDescriptionKeyboardAlt: 'खींचना शुरू करने के लिए Alt और Enter दबाएँ।',
      dragDescriptionTouch: 'खींचना शुरू करने के लिए दो बार छुएँ।',
      dragDescriptionVirtual: 'खींचना शुरू करने के लिए क्लिक करें।',
      dragDescriptionLongPress: 'खींचना शुरू करने के लिए देर तक दबाएँ।',
      dragSelectedKeyboard: 'चुने हुए {count} खींचने के लिए Enter दबाएँ।',
      dragSelectedKeyboardAlt: 'चुने हुए {count} खींचने के लिए Alt और Enter दबाएँ।',
      dragSelectedLongPress: 'चुने हुए {count} खींचने के लिए देर तक दबाएँ।',
      dragStartedKeyboard:
        'खींचना शुरू हुआ। रखने की जगह तक जाने के लिए Tab दबाएँ, फिर रखने के लिए Enter, या छोड़ देने के लिए Escape दबाएँ।',
      dragStartedTouch: 'खींचना शुरू हुआ। रखने की जगह तक जाएँ, फिर रखने के लिए दो बार छुएँ।',
      dragStartedVirtual: 'खींचना शुरू हुआ। रखने की जगह तक जाएँ, फिर रखने के लिए क्लिक करें या Enter दबाएँ।',
      endDragKeyboard: 'खींचा जा रहा है। छोड़ देने के लिए Enter दबाएँ।',
      endDragTouch: 'खींचा जा रहा है। छोड़ देने के लिए दो बार छुएँ।',
      endDragVirtual: 'खींचा जा रहा है। छोड़ देने के लिए क्लिक करें।',
      dropDescriptionKeyboard: 'रखने के लिए Enter दबाएँ। छोड़ देने के लिए Escape दबाएँ।',
      dropDescriptionTouch: 'रखने के लिए दो बार छुएँ।',
      dropDescriptionVirtual: 'रखने के लिए क्लिक करें।',
      dropCanceled: 'नहीं रखा गया।',
      dropComplete: 'रख दिया गया।',
      dropIndicator: 'रखने की जगह',
      dropOnRoot: 'यहाँ रखें',
      dropOnItem: 'इस पर रखें: {itemText}',
      insertBefore: 'इससे पहले रखें: {itemText}',
      insertBetween: 'इनके बीच रखें: {beforeItemText} और {afterItemText}',
      insertAfter: 'इसके बाद रखें: {itemText}',
    },
  },
};

/** The words of a part in all those languages, as the properties of an object in code; empty where there are none. */
export function propertiesOf(part: string): string {
  return Object.entries(PARTS_SAID)
    .flatMap(([language, parts]) => {
      const words = parts[part];
      return words === undefined ? [] : [`${JSON.stringify(language)}: ${codeOf(words)},`];
    })
    .join('\n');
}

function codeOf(words: Words): string {
  const each = Object.entries(words).map(([name, text]) => {
    const filled = text.replace(/\{(\w+)\}/g, (_all, place: string) => `\${args.${place}}`);
    return `${JSON.stringify(name)}: ${filled === text ? JSON.stringify(text) : `(args) => \`${filled}\``}`;
  });
  return `{ ${each.join(', ')} }`;
}
