/**
 * Names what an alias stands for: `EyeSide` says nothing to an editor that offers values, `'left' | 'right'` does. The
 * analyzer itself reads syntax only, so it is given the files of a program, whose type checker then knows.
 */
export function expandedTypes(ts, files, tsconfig) {
  const { config } = ts.readConfigFile(tsconfig, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent({ ...config, include: [], files }, ts.sys, '.');
  const program = ts.createProgram(files, options);
  const checker = program.getTypeChecker();
  return {
    modules: files.map((name) => program.getSourceFile(name)),
    plugin: {
      name: 'expanded-types',
      analyzePhase({ node, moduleDoc }) {
        if (!ts.isClassDeclaration(node)) return;
        const declaration = moduleDoc.declarations?.find(({ name }) => name === node.name?.text);
        for (const member of node.members) {
          const field = declaration?.members?.find(({ kind, name }) => kind === 'field' && name === member.name?.getText());
          if (!field) continue;
          field.type = { text: typeText(ts, checker, member) };
          const attribute = declaration.attributes?.find(({ fieldName }) => fieldName === field.name);
          if (attribute) attribute.type = field.type;
        }
      },
    },
  };
}

function typeText(ts, checker, member) {
  const { InTypeAlias, NoTruncation, UseSingleQuotesForStringLiteralType } = ts.TypeFormatFlags;
  // What can be given matters more than what is handed back.
  const type = checker.getTypeAtLocation(ts.isSetAccessor(member) ? member.parameters[0] : member);
  // Only choices are spelled out; an object is better known by its name.
  return checker.typeToString(type, member, NoTruncation | UseSingleQuotesForStringLiteralType | (type.isUnion() ? InTypeAlias : 0));
}
