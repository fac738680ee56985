using InspectLog.Assets;

namespace InspectLog.App.Tests.Assets;

/// <summary>One script out of many: in the order a browser runs them, and only of what is understood.</summary>
public sealed class ModuleBundleTests
{
    [Fact]
    public void Imported_modules_come_before_those_that_import_them_and_each_once()
    {
        var bundle = Of(
            ("main.js", "import \"./b.js\";\nimport { one as first } from \"./a.js\";\nfirst();\n"),
            ("a.js", "export function one() {\n  return 1;\n}\n"),
            ("b.js", "import { one } from \"./a.js\";\none();\n"));

        Assert.Equal(
            """
            const $a = (() => {
            function one() {return 1;}return {one}})();
            (() => {
            const { one } = $a;one();})();
            (() => {
            const { one: first } = $a;first();})();
            export { $a };

            """,
            bundle);
    }

    [Fact]
    public void Comments_go_and_texts_over_several_lines_stay()
    {
        var bundle = Of(("main.js", "// a\n/** b\n * c */\n  const text = `x\n  // y\n`; // z\nconst web = \"a; // b\";\n"));

        Assert.Contains("const text = `x\n  // y\n`; // z\nconst web = \"a; // b\";", bundle, StringComparison.Ordinal);
        Assert.DoesNotContain("// a", bundle, StringComparison.Ordinal);
        Assert.DoesNotContain("* c", bundle, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("import main from \"./a.js\";", "not understood")]
    [InlineData("import * as all from \"./a.js\";", "not understood")]
    [InlineData("export default 1;", "not understood")]
    [InlineData("export let live = 1;", "not understood")]
    [InlineData("export { one };", "not understood")]
    [InlineData("const here = import.meta.url;", "not understood")]
    [InlineData("import \"./none.js\";", "not there")]
    [InlineData("import \"./main.js\";", "in a circle")]
    [InlineData("const open = `x", "does not end")]
    [InlineData("/* open", "does not end")]
    public void What_is_not_understood_is_refused(string line, string why) => Assert.Contains(
        why, Assert.Throws<InvalidDataException>(() => Of(("main.js", line + "\n"), ("a.js", "export const one = 1;\n"))).Message, StringComparison.Ordinal);

    private static string Of(params (string Name, string Text)[] modules) =>
        ModuleBundle.Of(modules.ToDictionary(one => one.Name, one => one.Text), "main.js");
}
