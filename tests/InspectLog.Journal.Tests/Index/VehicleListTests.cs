using InspectLog.Journal.Entries;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Index;

/// <summary>The list of vehicles.</summary>
public sealed class VehicleListTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Vehicles_are_listed_with_those_last_worked_on_first()
    {
        var clock = Some.Clock();
        using var garage = Garage.Open(_folder.Path, clock);
        foreach (var name in new[] { "Teasel", "Heron", "Marigold" })
        {
            clock.Advance(TimeSpan.FromMinutes(1));
            garage.AddVehicle(Some.Technician, Some.Vehicle(name));
        }

        clock.Advance(TimeSpan.FromMinutes(1));
        garage.Append("heron", Some.Technician, _ => [new VehiclePictured(Some.Photo), new VehicleDescribed("Grey Heron", " ", null)]);

        Assert.Equal(["Grey Heron", "Marigold", "Teasel"], garage.Vehicles().Select(vehicle => vehicle.Name));
        var heron = garage.Vehicles()[0];
        Assert.Equal(("heron", " ", Some.Photo.Sha256), (heron.Id, heron.Description, heron.PictureSha256));
        Assert.Equal(clock.GetUtcNow(), heron.LastChanged);
    }
}
