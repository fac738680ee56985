using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests;

/// <summary>Adding vehicles: the ids they get, and the name they need.</summary>
public sealed class VehicleIdTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("Marigold", "marigold")]
    [InlineData("  Étoile Nº 5 ", "etoile-no-5")]
    [InlineData("Straßenkreuzer", "strassenkreuzer")]
    [InlineData("../../etc/passwd", "etc-passwd")]
    [InlineData("Ласточка", "vehicle")]
    [InlineData("CON", "con-2")]
    [InlineData("🚗", "vehicle")]
    public void Vehicle_id_is_made_from_its_name(string name, string expected)
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());

        Assert.Equal(expected, garage.AddVehicle(Some.Technician, Some.Vehicle(name)));
        Assert.Equal(name, garage.FindVehicle(expected)!.Name);
    }

    [Fact]
    public void Second_vehicle_of_a_name_gets_an_id_of_its_own()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());

        Assert.Equal("teasel", garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel")));
        Assert.Equal("teasel-2", garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel")));
        Assert.Equal("teasel-3", garage.AddVehicle(Some.Technician, Some.Vehicle("teasel!")));
    }

    [Fact]
    public void Vehicle_without_a_name_is_refused()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());

        Assert.Throws<ArgumentException>(() => garage.AddVehicle(Some.Technician, Some.Vehicle(" ")));
        Assert.Empty(garage.Vehicles());
    }
}
