using InspectLog.App.Listening;
using InspectLog.Journal.Index;

namespace InspectLog.App.Tests.Listening;

public sealed class WaitingOrderTests
{
    private static readonly WaitingRecording[] Waiting =
    [
        Note("marigold", 5, inspection: 2), Note("teasel", 6, inspection: 3), Note("marigold", 7, inspection: 2), Note("heron", 8, inspection: 4),
    ];

    [Fact]
    public void Newest_comes_first_while_nobody_has_an_inspection_open() =>
        Assert.Equal(8, WaitingOrder.Next(Waiting, (_, _) => false)!.Recording);

    [Fact]
    public void Newest_of_the_open_inspection_comes_before_newer_ones_of_others() =>
        Assert.Equal(7, WaitingOrder.Next(Waiting, (vehicle, inspection) => (vehicle, inspection) == ("marigold", 2))!.Recording);

    [Fact]
    public void Same_number_on_another_vehicle_is_another_inspection() =>
        Assert.Equal(8, WaitingOrder.Next(Waiting, (vehicle, inspection) => (vehicle, inspection) == ("teasel", 2))!.Recording);

    [Fact]
    public void Nothing_comes_when_nothing_waits() => Assert.Null(WaitingOrder.Next([], (_, _) => true));

    private static WaitingRecording Note(string vehicle, long recording, long inspection) =>
        new(vehicle, recording, inspection, DateTimeOffset.UnixEpoch.AddSeconds(recording));
}
