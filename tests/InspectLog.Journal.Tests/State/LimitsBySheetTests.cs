using System.Text;
using System.Text.Json;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.State;

/// <summary>Members that were added to kinds of entries that journals hold already.</summary>
public sealed class LimitsBySheetTests
{
    private static readonly LimitsSet Old = new("plug-gap", 0.6, 0.8, "manual");

    [Fact]
    public void Limits_of_one_check_are_kept_for_each_sheet()
    {
        var state = After(Old, Old with { Sheet = "ignition", Lower = 0.7 }, Old with { Sheet = "mower", Lower = 0.5 });

        Assert.Equal(
            [(null, 0.6), ("ignition", 0.7), ("mower", 0.5)],
            state.Limits.OrderBy(pair => pair.Key.Sheet, StringComparer.Ordinal).Select(pair => (pair.Key.Sheet, pair.Value.Lower!.Value)));
    }

    [Fact]
    public void Limits_are_cleared_for_the_sheet_they_were_set_for()
    {
        var set = new[] { Old, Old with { Sheet = "ignition" } };

        Assert.Equal([new(null, "plug-gap")], After([.. set, new LimitsCleared("plug-gap") { Sheet = "ignition" }]).Limits.Keys);
        Assert.Equal([new("ignition", "plug-gap")], After([.. set, new LimitsCleared("plug-gap")]).Limits.Keys);
    }

    [Fact]
    public void What_old_entries_left_out_is_null_and_is_not_written()
    {
        Assert.Equal("""{"check":"plug-gap","lower":0.6,"source":"manual","upper":0.8}""", Json(Old));
        Assert.Null(((LimitsSet)Read("limits-set", Json(Old))).Sheet);
        Assert.Null(((LimitsCleared)Read("limits-cleared", """{"check":"plug-gap"}""")).Sheet);
        Assert.Null(((InspectionStarted)Read(
            "inspection-started", """{"sheet":"s","sheetSha256":"","sheetVersion":1,"technician":"Tess Okafor"}""")).Cylinders);
    }

    [Theory]
    [MemberData(nameof(Added))]
    public void What_was_added_is_written_and_read_back(EntryBody body, string kind, string member)
    {
        Assert.Contains(member, Json(body), StringComparison.Ordinal);
        Assert.Equal(body, Read(kind, Json(body)));
    }

    public static TheoryData<EntryBody, string, string> Added => new()
    {
        { Old with { Sheet = "ignition" }, "limits-set", "\"sheet\":\"ignition\"" },
        { new LimitsCleared("plug-gap") { Sheet = "ignition" }, "limits-cleared", "\"sheet\":\"ignition\"" },
        { new InspectionStarted("s", 1, "", Some.Technician, null, null) { Cylinders = 4 }, "inspection-started", "\"cylinders\":4" },
    };

    private static string Json(EntryBody body) => Encoding.UTF8.GetString(BodyJson.Write(body));

    private static EntryBody Read(string kind, string json)
    {
        using var document = JsonDocument.Parse(json);
        return BodyJson.Read(kind, 1, document.RootElement)!;
    }

    private static VehicleState After(params EntryBody[] bodies) => bodies
        .Select((body, at) => new JournalEntry(at + 1, DateTimeOffset.UnixEpoch, TimeSpan.Zero, Some.Technician, body, "", 1, "", ""))
        .Aggregate(VehicleState.Before("teasel"), (state, entry) => state.Apply(entry));
}
