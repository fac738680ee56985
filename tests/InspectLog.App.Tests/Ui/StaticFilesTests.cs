using System.Net;
using InspectLog.App.Tests.Web;
using InspectLog.Tests;

namespace InspectLog.App.Tests.Ui;

/// <summary>Scripts and styles: served whole, and those of others as their makers published them.</summary>
public sealed class StaticFilesTests
{
    private static string Root => Path.Combine(AppContext.BaseDirectory, "wwwroot");

    [Fact]
    public async Task Every_static_file_is_served_with_its_bytes()
    {
        await using var app = await TestApp.StartAsync();
        var files = Directory.GetFiles(Root, "*", SearchOption.AllDirectories);
        Assert.True(files.Length > 15, "The list of static files looks too short to be all of them.");

        foreach (var file in files.Where(file => !file.EndsWith("SHA256SUMS", StringComparison.Ordinal)))
        {
            var address = "/" + Path.GetRelativePath(Root, file).Replace('\\', '/');
            if (Path.GetExtension(file) is ".md")
            {
                continue;
            }

            var answer = await app.Client.GetAsync(address, TestContext.Current.CancellationToken);
            var bytes = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);

            Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{address} answered {answer.StatusCode}.");
            Assert.True(bytes.Length > 0 && bytes.Length == new FileInfo(file).Length, $"{address} came as {bytes.Length} bytes.");
        }
    }

    [Fact]
    public void Third_party_scripts_are_the_published_files()
    {
        var vendor = Path.Combine(Root, "vendor");
        ListedHashes.Hold(vendor, "*.js");

        // From the npm packages htmx.org 2.0.11 and idiomorph 0.8.0, dist folder; so the list cannot be edited along.
        Assert.Equal(
            new Dictionary<string, string>
            {
                ["htmx-2.0.11.min.js"] = "d6fdc75f204e6bdefa99b69bf1e6d4ac69b8a364f77929f45c13476b4000f717",
                ["idiomorph-0.8.0.min.js"] = "4cbd535caf7663a51eda9bce6595371c384fc430d54b8d414e29a61167f19f96",
            },
            ListedHashes.Of(vendor));
    }

    [Fact]
    public async Task Every_script_and_style_a_page_names_exists()
    {
        await using var app = await TestApp.StartAsync();
        var page = await app.PageAsync(await app.StartInspectionAsync());
        var named = page.QuerySelectorAll("script[src]").Select(script => script.GetAttribute("src")!)
            .Concat(page.QuerySelectorAll("link[href]").Select(link => link.GetAttribute("href")!))
            .ToList();

        Assert.True(named.Count >= 6);
        foreach (var address in named)
        {
            var answer = await app.Client.GetAsync(address, TestContext.Current.CancellationToken);
            Assert.True(answer.IsSuccessStatusCode, $"{address} answered {answer.StatusCode}.");
        }
    }

    [Fact]
    public void Own_scripts_never_build_code_or_markup_from_text()
    {
        foreach (var script in Directory.GetFiles(Path.Combine(Root, "js"), "*.js", SearchOption.AllDirectories))
        {
            var code = File.ReadAllText(script);
            foreach (var forbidden in new[] { "eval(", "new Function", ".innerHTML", ".outerHTML", "document.write", "insertAdjacentHTML" })
            {
                Assert.False(code.Contains(forbidden, StringComparison.Ordinal), $"{Path.GetFileName(script)} uses {forbidden}");
            }
        }
    }
}
