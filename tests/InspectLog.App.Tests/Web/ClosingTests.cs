using System.Net;
using InspectLog.Checks;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>Loose ends, and closing an inspection.</summary>
public sealed class ClosingTests
{
    [Fact]
    public async Task Check_is_left_out_for_a_usual_reason_in_one_press()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var reasons = (await app.PageAsync($"{bench}?check=spark")).QuerySelectorAll("#leave-out-spark button[name=usual]")
            .Select(button => button.GetAttribute("value")!).ToList();
        Assert.Equal(
            reasons, (await app.PageAsync($"{bench}/close")).QuerySelectorAll("#usual-reasons [data-fill]").Select(button => button.GetAttribute("data-fill")));

        await app.PostForRedirectAsync($"{bench}/checks/spark/leave-out", ("usual", reasons[0]));

        Assert.Equal(reasons[0], app.Inspection().LeftOut["spark"]);
    }

    private static readonly CheckSheet Sheet = BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;

    [Fact]
    public async Task Disconnected_part_is_a_loose_end_until_it_is_reconnected()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync(
            $"{bench}/actions", ("check", "lead-condition"), ("cylinder", "4"), ("action", "disconnected"));
        Assert.Equal("Lead 4 disconnected", Assert.Single(Inspection(app).OpenLooseEnds).What.Text);

        await app.PostForRedirectAsync(
            $"{bench}/actions", ("check", "lead-condition"), ("cylinder", "3"), ("action", "reconnected"));
        Assert.Single(Inspection(app).OpenLooseEnds);

        await app.PostForRedirectAsync(
            $"{bench}/actions", ("check", "lead-condition"), ("cylinder", "4"), ("action", "reconnected"));
        Assert.Empty(Inspection(app).OpenLooseEnds);
    }

    [Fact]
    public async Task Measuring_opens_what_the_check_disturbs_once()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var check = Sheet.Find("coil-secondary-resistance")!;

        for (var i = 0; i < 2; i++)
        {
            await app.PostForRedirectAsync($"{bench}/readings", ("check", check.Id), ("value", "9.4"), ("unit", "kΩ"));
        }

        Assert.NotEmpty(check.Disturbs);
        Assert.Equal(
            check.Disturbs.Select(disturbance => disturbance.Id),
            Inspection(app).LooseEnds.Select(end => end.What.Disturbance));
    }

    [Fact]
    public async Task Inspection_with_checks_to_do_or_loose_ends_does_not_close_and_keeps_what_was_given()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/loose-ends", ("text", "Air filter off"));

        var answer = await app.PostAsync($"{bench}/close", ("reason-spark", "No fuel in the car"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.False(Inspection(app).IsClosed);
        Assert.Equal("No fuel in the car", Inspection(app).LeftOut["spark"]);
    }

    [Fact]
    public async Task Inspection_closes_when_each_check_has_a_reason_and_each_loose_end_is_settled()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/loose-ends", ("text", "Air filter off"));
        await app.PostForRedirectAsync($"{bench}/loose-ends", ("text", "Inspection lamp hung up"));
        var ends = Inspection(app).LooseEnds.Select(end => end.Sequence).ToList();

        var report = await app.PostForRedirectAsync(
            $"{bench}/close",
            [
                .. Sheet.Checks.Select(check => ($"reason-{check.Id}", "Not today")),
                ($"tie-{ends[0]}", "on"),
                ($"waive-{ends[1]}", "Used tomorrow"),
            ]);

        Assert.Equal($"{bench}/report", report);
        Assert.True(Inspection(app).IsClosed);
    }

    [Fact]
    public async Task Closed_inspection_takes_nothing_more()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync(
            $"{bench}/close", [.. Sheet.Checks.Select(check => ($"reason-{check.Id}", "Not today"))]);

        var answer = await app.PostAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.2"), ("unit", "Ω"));

        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Empty(Inspection(app).Readings);
    }

    [Fact]
    public async Task Reason_is_needed_to_leave_out_waive_or_withdraw()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/loose-ends", ("text", "Air filter off"));
        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.2"), ("unit", "Ω"));
        var end = Inspection(app).LooseEnds[0].Sequence;
        var reading = Inspection(app).Readings[0].Sequence;

        foreach (var address in new[] { "checks/spark/leave-out", $"loose-ends/{end}/waive", $"entries/{reading}/withdraw" })
        {
            var answer = await app.PostAsync($"{bench}/{address}", ("reason", " "));
            Assert.True(answer.StatusCode == HttpStatusCode.UnprocessableEntity, address);
        }

        Assert.Single(Inspection(app).Readings);
    }

    private static InspectionState Inspection(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];
}
