using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Workings;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;
using System.Net;

namespace InspectLog.App.Tests.Web;

/// <summary>A journal that holds numbers no instrument shows: its pages are shown all the same.</summary>
public sealed class HugeNumberTests
{
    private static readonly CheckSheet Sheet = BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;

    public static TheoryData<double, double, double?> Numbers => new()
    {
        { 1e99, 1e100, null },
        { 1e32, 2e32, 1e29 },
        { 1e300, 1e301, 1e300 },
        { -1e300, 1e300, 1e29 },
        { double.MaxValue, -double.MaxValue, double.MaxValue },
        { double.Epsilon, 1e-300, 1e-200 },
    };

    [Theory]
    [MemberData(nameof(Numbers))]
    public async Task Every_page_of_the_vehicle_is_shown(double one, double other, double? limit)
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        var checks = Sheet.Checks.Where(check => check.Measurand is not null).ToList();
        if (limit is { } upper)
        {
            Append(app, [.. checks.Select(check => new LimitsSet(check.Id, null, upper, "Invented manual, page 12"))]);
        }

        for (var number = 0; number < 5; number++)
        {
            var bench = await app.PostForRedirectAsync($"{vehicle}/inspections", ("odometer", $"{80_000 + number}"));
            var inspection = app.Garage.FindVehicle("marigold")!.OpenInspection!.Number;
            var value = number % 2 == 0 ? one : other;
            Append(app, [.. checks.SelectMany(check => ReadingsOf(inspection, check, value, one, other))]);
            await ShownAsync(app, bench, $"{bench}/report", $"{bench}/close");
            foreach (var check in checks)
            {
                await ShownAsync(app, $"{bench}?check={check.Id}");
            }

            foreach (var kind in WorkingKinds.All)
            {
                // A figure that cannot be worked out is refused with its reason.
                var worked = await app.Client.GetAsync($"{bench}/workings/{kind.Id}", TestContext.Current.CancellationToken);
                Assert.True((int)worked.StatusCode < 500, $"{kind.Id} answered {worked.StatusCode}.");
            }

            if (number < 4)
            {
                Append(app, [new InspectionClosed(inspection)]);
            }
        }

        await ShownAsync(app, "/", vehicle, $"{vehicle}?by=odometer", $"{vehicle}/journal", "/find?q=1");
        foreach (var check in checks)
        {
            var place = check.PerCylinder ? "&place=1" : "";
            await ShownAsync(
                app,
                $"{vehicle}/limits/{check.Id}",
                $"{vehicle}/trends/{check.Id}?by=date{place}",
                $"{vehicle}/trends/{check.Id}?by=odometer{place}");
        }
    }

    [Theory]
    [InlineData("coil-circuit-resistance", "1e99", "Ω")]
    [InlineData("ignition-timing", "1e300", "°")]
    [InlineData("coil-circuit-resistance", "1e16", "Ω")]
    public async Task Number_that_no_instrument_shows_is_refused(string check, string typed, string unit)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.PostAsync($"{bench}/readings", ("check", check), ("value", typed), ("unit", unit), ("meant", typed));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(
            "No instrument shows a number that large",
            (await TestApp.ParseAsync(answer)).Body!.TextContent,
            StringComparison.Ordinal);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Inspections[0].Readings);
    }

    [Fact]
    public async Task Bracket_that_no_gauge_has_is_refused()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.PostAsync(
            $"{bench}/brackets", ("check", "pickup-air-gap"), ("goes", "1e300"), ("stops", "1e301"), ("unit", "mm"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Inspections[0].Readings);
    }

    [Theory]
    [InlineData("1e29", "No instrument shows")]
    [InlineData("1e300", "No instrument shows")]
    [InlineData("5000 Ω", "far from anything this check reads")]
    public async Task Limit_far_from_what_the_check_reads_is_refused(string upper, string reason)
    {
        await using var app = await TestApp.StartAsync();
        await app.AddVehicleAsync();

        var answer = await app.PostAsync(
            "/vehicles/marigold/limits/coil-circuit-resistance",
            ("upper", upper), ("unit", "Ω"), ("source", "Invented manual, page 12"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(reason, (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Limits);
    }

    /// <summary>As the program would have recorded them where it can decide them; else without a decision.</summary>
    private static IEnumerable<EntryBody> ReadingsOf(long inspection, Check check, double value, double one, double other)
    {
        int? place = check.PerCylinder ? 1 : null;
        var meter = new Instrument("meter", "Meter", check.Measurand!.Kind, new Accuracy(1, 5), 0.1);
        yield return Recorded(new GivenReading(check, place, [value, value], null, "typed", meter, []));
        if (check.Measurand.Gauge)
        {
            var bracket = new Bracket(Math.Min(one, other), Math.Max(one, other));
            yield return Recorded(new GivenReading(check, place, [], bracket, "typed", null, []));
        }

        ReadingDecided Recorded(GivenReading given)
        {
            try
            {
                var decided = ReadingRecords.Decide(inspection, Sheet.Rule, given);
                if (decided.Conformity is { } made && double.IsFinite(made.ExpandedUncertainty) && double.IsFinite(made.ProbabilityOfConformity))
                {
                    return decided;
                }
            }
            catch (ArgumentException)
            {
                // Recorded as it stands below.
            }

            Reading reading = given.Bracket is { } bracket ? bracket : new DisplayedReading(given.Values, meter.Accuracy, meter.Resolution);
            return new(inspection, check.Id, place, reading, given.AsGiven, given.Instrument, null, null, []);
        }
    }

    private static void Append(TestApp app, IReadOnlyList<EntryBody> bodies) =>
        app.Garage.Append("marigold", "Tess Okafor", _ => bodies);

    private static async Task ShownAsync(TestApp app, params string[] addresses)
    {
        foreach (var address in addresses)
        {
            var answer = await app.Client.GetAsync(address, TestContext.Current.CancellationToken);
            Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{address} answered {answer.StatusCode}.");
        }
    }
}
