using InspectLog.App.Forms;
using InspectLog.App.Network;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Index;

namespace InspectLog.App.Devices;

/// <summary>The page of devices.</summary>
/// <param name="Network">How phones reach this computer; null where the program is not open to the network.</param>
/// <param name="Devices">Devices and links that hold, those given last first.</param>
/// <param name="Past">Those that hold no more.</param>
/// <param name="People">Names known here.</param>
/// <param name="Vehicles">The vehicles.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record DevicesView(
    NetworkView? Network,
    IReadOnlyList<DeviceLine> Devices,
    IReadOnlyList<DeviceLine> Past,
    IReadOnlyList<string> People,
    IReadOnlyList<VehicleSummary> Vehicles,
    RefusedForm? Form,
    IReadOnlyList<GarageProblem> Problems);

/// <summary>How phones reach this computer.</summary>
/// <param name="Addresses">The addresses.</param>
/// <param name="Fingerprint">SHA-256 of the authority's certificate.</param>
public sealed record NetworkView(OpenAddresses Addresses, string Fingerprint);

/// <summary>A device, or a link.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Given">For whom and for what.</param>
/// <param name="For">Name of the one vehicle it is for; null for all.</param>
/// <param name="Since">When it was given.</param>
/// <param name="Seen">When it was last seen since the program was started; null where it was not.</param>
/// <param name="Withdrawn">When it was withdrawn; null where it was not.</param>
public sealed record DeviceLine(
    long Number, AccessGiven Given, string? For, DateTimeOffset Since, DateTimeOffset? Seen, DateTimeOffset? Withdrawn);

/// <summary>A code waiting for its device.</summary>
/// <param name="Offer">The code.</param>
/// <param name="IsOpen">Whether it still works.</param>
/// <param name="IsLocked">Whether too many wrong codes were typed.</param>
/// <param name="Seconds">How long it works yet.</param>
/// <param name="Pictures">The address with the secret, for each address of this computer.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record OfferView(
    PairingOffer Offer, bool IsOpen, bool IsLocked, int Seconds, IReadOnlyList<Uri> Pictures, IReadOnlyList<GarageProblem> Problems);

/// <summary>The page a device opens to be paired.</summary>
/// <param name="Caller">Who is here already; null for a stranger.</param>
/// <param name="Problem">Why the last try failed; null where there was none.</param>
public sealed record PairView(Access.Caller? Caller, string? Problem);
