using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using InspectLog.Checks;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>A vehicle of which nothing is known but its name: no engine, no picture, no odometer. Every page that a link
/// leads to opens, whatever was done on it.</summary>
public sealed partial class LittleKnownVehicleTests
{
    private static readonly CheckSheet Sheet = BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task Every_page_opens_after_some_inspections(int inspections)
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync(cylinders: "");
        for (var i = 0; i < inspections; i++)
        {
            await InspectAsync(app, vehicle);
            app.Garage.Append("marigold", "Tess Okafor", now => [new InspectionClosed(now.OpenInspection!.Number)]);
        }

        await AssertEveryPageOpensAsync(app, vehicle);
    }

    [Fact]
    public async Task Every_page_opens_in_the_middle_of_an_inspection()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync(cylinders: "");
        await InspectAsync(app, vehicle);

        await AssertEveryPageOpensAsync(app, vehicle);
    }

    /// <summary>Gives each check one record at its last place.</summary>
    private static async Task InspectAsync(TestApp app, string vehicle)
    {
        var bench = await app.PostForRedirectAsync($"{vehicle}/inspections", ("cylinders", "6"));
        foreach (var check in Sheet.Checks)
        {
            var place = check.PerCylinder ? "6" : "";
            if (check.Measurand is { } measurand)
            {
                var limits = measurand.Limits;
                var value = measurand.DisplayUnit.FromBase(((limits?.Lower ?? 0) + (limits?.Upper ?? 2 * (limits?.Lower ?? 5))) / 2);
                await app.PostForRedirectAsync(
                    $"{bench}/readings",
                    ("check", check.Id), ("cylinder", place), ("value", value.ToString("G4", CultureInfo.InvariantCulture)), ("unit", measurand.DisplayUnit.Symbol));
            }
            else
            {
                await app.PostForRedirectAsync(
                    $"{bench}/observations", ("check", check.Id), ("cylinder", place), ("condition", check.Conditions[0].Id));
            }
        }
    }

    private static async Task AssertEveryPageOpensAsync(TestApp app, string vehicle)
    {
        var seen = new HashSet<string>();
        var next = new Queue<string>(["/", vehicle, "/find?words=lead"]);
        while (next.TryDequeue(out var address))
        {
            var answer = await app.Client.GetAsync(address, TestContext.Current.CancellationToken);
            Assert.True(answer.StatusCode is HttpStatusCode.OK || IsAsked(address, answer), $"{address}: {answer.StatusCode}");
            if (answer.Content.Headers.ContentType?.MediaType == "text/html")
            {
                (await LinksAsync(answer)).Where(link => seen.Add(Number().Replace(link, "/N"))).ToList().ForEach(next.Enqueue);
            }
        }

        Assert.True(seen.Count > 10, $"Only {seen.Count} links were found.");
    }

    /// <summary>Figures that cannot be worked out from what is recorded ask for what is missing.</summary>
    private static bool IsAsked(string address, HttpResponseMessage answer) =>
        address.Contains("/workings/", StringComparison.Ordinal) && answer.StatusCode is HttpStatusCode.UnprocessableEntity;

    private static async Task<IEnumerable<string>> LinksAsync(HttpResponseMessage page) =>
        (await TestApp.ParseAsync(page)).QuerySelectorAll("a[href]")
            .Select(link => link.GetAttribute("href")!.Split('#')[0])
            .Where(link => link.StartsWith('/'));

    /// <summary>Pages of different inspections are of one sort.</summary>
    [GeneratedRegex(@"/\d+")]
    private static partial Regex Number();
}
