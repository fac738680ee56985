using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Network;
using InspectLog.App.People;
using InspectLog.Journal;

namespace InspectLog.App.Devices;

/// <summary>Gathers what the pages of devices show.</summary>
public sealed class DevicesDesk(Garage garage, PairingCodes codes, Sightings sightings, ReachedAt reached, TimeProvider time, WorkshopCertificates? certificates = null)
{
    /// <summary>All devices.</summary>
    public DevicesView All(RefusedForm? refused)
    {
        var now = time.GetLocalNow();
        var lines = garage.Workshop.Accesses.Reverse().ToLookup(one => one.Holds(now), Line);
        return new(
            certificates is null ? null : new(reached.Addresses, certificates.Fingerprint),
            [.. lines[true]], [.. lines[false]], KnownPeople.Of(garage), garage.Vehicles(), refused, garage.Problems);
    }

    /// <summary>One code.</summary>
    public OfferView One(PairingOffer offer) => new(
        offer,
        codes.IsOpen(offer),
        codes.IsLocked,
        (int)Math.Max(0, Math.Ceiling((offer.Until - time.GetUtcNow()).TotalSeconds)),
        [.. reached.Addresses.Phones.Select(address => new Uri(address, $"{Links.Pair}#{offer.Secret.Value}"))],
        garage.Problems);

    private DeviceLine Line(Journal.State.Access access) => new(
        access.Number,
        access.Given,
        access.Given.Vehicle is { } vehicle ? garage.FindVehicle(vehicle)?.Name ?? vehicle : null,
        access.Time,
        sightings.Last(access.Number),
        access.Withdrawn);
}
