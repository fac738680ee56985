using InspectLog.App.Forms;
using InspectLog.Journal;

namespace InspectLog.App.Seals;

/// <summary>The page that seals the record of a vehicle.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Name">Its name.</param>
/// <param name="Inspection">Number of the inspection whose report one came from.</param>
/// <param name="State">How it is sealed now.</param>
/// <param name="HasKey">Whether the workshop has a key.</param>
/// <param name="IsProtected">Whether the key is kept under a passphrase.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record SealView(
    string Vehicle, string Name, long Inspection, SealedState State, bool HasKey, bool IsProtected, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems);

/// <summary>The page of the key.</summary>
/// <param name="Fingerprint">Its fingerprint as reports print it; null where it is not known without the passphrase, or there
/// is no key.</param>
/// <param name="HasKey">Whether there is a key.</param>
/// <param name="IsProtected">Whether it is kept under a passphrase.</param>
/// <param name="File">Where it is kept.</param>
/// <param name="Sheet">The lines of the recovery sheet, where they were asked for; null otherwise.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record SealKeyView(
    string? Fingerprint, bool HasKey, bool IsProtected, string File, IReadOnlyList<string>? Sheet, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems);
