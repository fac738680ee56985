using System.Globalization;
using System.Security.Cryptography;
using InspectLog.App.Access;

namespace InspectLog.App.Devices;

/// <summary>The codes that are shown to pair a device: each works once, for two minutes. They are in memory alone. Safe for
/// use by many threads.</summary>
public sealed class PairingCodes(TimeProvider time)
{
    /// <summary>How long a code works.</summary>
    public static readonly TimeSpan Life = TimeSpan.FromMinutes(2);

    /// <summary>How many wrong codes are taken before typed codes work no more; what the picture holds cannot be guessed and
    /// still works.</summary>
    public const int Attempts = 5;

    /// <summary>Digits of a typed code: with five attempts, one guess in twenty million succeeds.</summary>
    private const int Digits = 8;

    // Of offers that are over, so many are remembered, to tell how they ended.
    private const int Remembered = 20;

    private readonly Lock _lock = new();
    private readonly List<PairingOffer> _offers = [];
    private int _wrong;

    /// <summary>Makes a code and the secret for its picture.</summary>
    public PairingOffer Offer(Invitation invitation)
    {
        var code = RandomNumberGenerator.GetInt32((int)Math.Pow(10, Digits)).ToString($"D{Digits}", CultureInfo.InvariantCulture);
        var offer = new PairingOffer(Token.Make().Value[..16], code, Token.Make(), invitation, time.GetUtcNow() + Life);
        lock (_lock)
        {
            // Whoever makes a new code stands at the workshop's computer and means it.
            _wrong = 0;
            _offers.Add(offer);
            _offers.RemoveRange(0, Math.Max(0, _offers.Count - Remembered));
        }

        return offer;
    }

    /// <summary>An offer as it stands; null where it is not known any more.</summary>
    public PairingOffer? Find(string id)
    {
        lock (_lock)
        {
            return _offers.Find(one => one.Id == id);
        }
    }

    /// <summary>Whether an offer can still be taken up.</summary>
    public bool IsOpen(PairingOffer offer) => !offer.IsUsed && offer.Until > time.GetUtcNow();

    /// <summary>Whether so many wrong codes came that typed ones work no more until a new one is made.</summary>
    public bool IsLocked
    {
        get
        {
            lock (_lock)
            {
                return _wrong >= Attempts;
            }
        }
    }

    /// <summary>Takes up an offer by what its picture holds, or by its typed code. It works once.</summary>
    /// <param name="given">What was given; of a code, anything but digits is passed over.</param>
    /// <returns>The offer; null where nothing open has this secret or code, or where codes are locked.</returns>
    public PairingOffer? Redeem(string given)
    {
        lock (_lock)
        {
            var at = Token.Read(given) is { } secret
                ? _offers.FindIndex(one => IsOpen(one) && one.Secret.Is(secret.Sha256))
                : ByCode(string.Concat(given.Where(char.IsAsciiDigit)));
            if (at < 0)
            {
                return null;
            }

            return _offers[at] = _offers[at] with { IsUsed = true };
        }
    }

    private int ByCode(string code)
    {
        if (_wrong >= Attempts)
        {
            return -1;
        }

        var at = _offers.FindIndex(one => IsOpen(one) && one.Code == code);
        _wrong += at < 0 ? 1 : 0;
        return at;
    }
}

/// <summary>For whom a device is to be paired, and for what.</summary>
/// <param name="Person">Whose it is.</param>
/// <param name="Device">What it is to be called.</param>
/// <param name="Role">What they may do.</param>
/// <param name="Vehicle">The one vehicle it is for; null for all.</param>
public sealed record Invitation(string Person, string Device, Journal.Entries.AccessRole Role, string? Vehicle);

/// <summary>A code that pairs one device.</summary>
/// <param name="Id">Names it in addresses; opens nothing.</param>
/// <param name="Code">What is typed.</param>
/// <param name="Secret">What the picture holds.</param>
/// <param name="Invitation">For whom.</param>
/// <param name="Until">When it ends.</param>
public sealed record PairingOffer(string Id, string Code, Token Secret, Invitation Invitation, DateTimeOffset Until)
{
    /// <summary>Whether a device took it up.</summary>
    public bool IsUsed { get; init; }

    /// <summary>The code as it is read aloud.</summary>
    public string Spaced => $"{Code[..4]} {Code[4..]}";
}
