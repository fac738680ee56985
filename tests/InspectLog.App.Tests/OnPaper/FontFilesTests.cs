using InspectLog.Tests;

namespace InspectLog.App.Tests.OnPaper;

public sealed class FontFilesTests
{
    [Fact]
    public void Fonts_are_the_files_that_are_listed_and_the_ones_built_in()
    {
        var folder = Repository.PathOf("src", "InspectLog.Paper", "fonts");

        ListedHashes.Hold(folder, "*.ttf");
        Assert.All(ListedHashes.Of(folder), listed =>
        {
            Assert.Contains(listed.Value, File.ReadAllText(Path.Combine(folder, "README.md")), StringComparison.Ordinal);
            using var file = typeof(Paper.PaperWriter).Assembly.GetManifestResourceStream(listed.Key)!;
            Assert.Equal(listed.Value, Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(file)));
        });
    }
}
