namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>How a number was said.</summary>
internal enum NumberForm
{
    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>With its point said or written.</summary>
    Decimal,

    /// <summary>With a fraction: "eleven and a half".</summary>
    Fraction,

    /// <summary>The point left out: "nine eight".</summary>
    PointLeftOut,

    /// <summary>"Hundred" left out: "one fifty".</summary>
    HundredLeftOut,

    /// <summary>Digit by digit: "one two point four".</summary>
    Digits,

    /// <summary>"Top dead centre", an angle of zero.</summary>
    ZeroAngle,

    /// <summary>First, second.</summary>
    Ordinal,

    /// <summary>A word that sounds like a number.</summary>
    Alike,

    /// <summary>The unit in place of the point: "nine k two".</summary>
    UnitAsPoint,

    /// <summary>Place and value written together: "plug 1.8".</summary>
    Split,

    /// <summary>A comma in place of the point.</summary>
    Comma,
}

/// <summary>One way to read a number.</summary>
/// <param name="Next">Token after it.</param>
/// <param name="Value">The number.</param>
/// <param name="Form">How it was said.</param>
internal readonly record struct NumberReading(int Next, double Value, NumberForm Form);
