using InspectLog.App.Demo;
using InspectLog.Inspecting.Standing;
using System.Text;
using System.Text.Json;

namespace InspectLog.App.Tests.Demo;

/// <content>What the story says of time, and stories that are none.</content>
public sealed partial class StoryTests
{
    [Fact]
    public void Time_goes_forward_and_ends_before_the_demo_is_opened()
    {
        var now = new DateTimeOffset(2026, 11, 25, 8, 0, 0, TimeSpan.FromHours(1));
        foreach (var (_, inspection) in DemoFiles.Inspections)
        {
            var after = inspection.Steps.Select(step => step.After).ToList();
            Assert.Equal(after.Order(), after);
            Assert.True(inspection.Started.Before(now) + after[^1] < now);
        }
    }

    [Fact]
    public void Each_vehicle_has_an_earlier_closed_inspection_and_one_is_open()
    {
        var closed = DemoFiles.Story.Vehicles.ToDictionary(
            vehicle => vehicle.Name,
            vehicle => vehicle.Inspections.Select(inspection => inspection.Steps[^1].What is CloseStep).ToArray());

        Assert.Equal([true, true, true, true, true, false], closed["Marigold"]);
        Assert.Equal([true, true, true], closed["Teasel"]);
    }

    [Fact]
    public void Closed_inspection_has_every_place_of_every_check_or_a_reason()
    {
        foreach (var (_, inspection) in DemoFiles.Inspections.Where(part => part.Inspection.Steps[^1].What is CloseStep))
        {
            var sheet = SheetOf(inspection);
            var due = sheet.Checks
                .SelectMany(check => Places(sheet, check).Select(place => (check.Id, place)))
                .ToHashSet();
            due.ExceptWith(inspection.Steps.SelectMany(step => Covered(sheet, step.What)));

            Assert.Empty(due);
        }
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("{\"people\":[],\"instruments\":[],\"recordings\":[],\"vehicles\":[],\"more\":1}")]
    [InlineData("{\"people\":null,\"instruments\":[],\"recordings\":[],\"vehicles\":[]}")]
    public void Story_with_members_missing_or_unknown_is_refused(string json)
    {
        Assert.Throws<JsonException>(() => Story.Read(Encoding.UTF8.GetBytes(json)));
    }

    [Fact]
    public void Step_that_says_two_things_is_refused()
    {
        var step = new StoryStep(TimeSpan.Zero, Close: new CloseStep(), Tie: new TieStep("ignition-on"));

        Assert.Throws<InvalidOperationException>(() => step.What);
    }
}
