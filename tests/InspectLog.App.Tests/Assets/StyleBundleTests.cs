using InspectLog.Assets;

namespace InspectLog.App.Tests.Assets;

/// <summary>One stylesheet out of many, none forgotten.</summary>
public sealed class StyleBundleTests
{
    [Fact]
    public void Style_that_nobody_imports_is_refused()
    {
        var folder = Directory.CreateTempSubdirectory("inspectlog-styles-");
        File.WriteAllText(Path.Combine(folder.FullName, "app.css"), "/* all */\n@import url(\"a.css\");\n");
        File.WriteAllText(Path.Combine(folder.FullName, "a.css"), "/* a\n b */\n  p a :hover { color: red; }\n\n");
        Assert.Equal("p a :hover{color:red}\n", StyleBundle.Of(folder.FullName, "app.css"));

        File.WriteAllText(Path.Combine(folder.FullName, "b.css"), "");
        Assert.Contains("b.css", Assert.Throws<InvalidDataException>(() => StyleBundle.Of(folder.FullName, "app.css")).Message, StringComparison.Ordinal);

        File.WriteAllText(Path.Combine(folder.FullName, "app.css"), "p { }\n");
        Assert.Throws<InvalidDataException>(() => StyleBundle.Of(folder.FullName, "app.css"));
        folder.Delete(recursive: true);
    }
}
