using System.Globalization;
using CsCheck;

namespace InspectLog.Measuring.Tests;

public class TypedNumberPropertyTests
{
    // The number conventions of a few countries, as a person there would type them.
    private static readonly (char Decimal, string Group)[] Conventions =
        [('.', ""), ('.', ","), (',', ""), (',', "."), (',', " "), (',', "\u00A0"), ('.', "'"), ('.', "\u2019")];

    [Fact]
    public void Certain_number_is_the_one_that_was_written() =>
        Gen.Select(
            Gen.Long[1, 99_999_999],
            Gen.Int[0, 4],
            Gen.OneOf(Conventions),
            Gen.OneOf([.. Units.Of(QuantityKind.Resistance)]),
            Gen.Double[0, 3],
            Gen.Double[0, 3])
        .Sample((digits, decimals, convention, unit, below, above) =>
        {
            var number = digits / (decimal)Math.Pow(10, decimals);
            var meant = (double)number * unit.InBaseUnit;
            var plausible = new PlausibleSpan(meant * Math.Pow(10, -below), meant * Math.Pow(10, above));
            var text = Written(number, decimals, convention);

            return TypedNumber.Read(text, QuantityKind.Resistance, unit, plausible) switch
            {
                TypedNumber.Certain certain => Same(certain.BaseValue, meant),
                TypedNumber.Ambiguous asked => asked.Choices.Count > 1
                    && asked.Choices.Any(choice => Same(choice.BaseValue, meant)),
                _ => false,
            };
        });

    [Fact]
    public void Any_text_gets_an_answer() =>
        Gen.Select(Gen.String[0, 80], Gen.Enum<QuantityKind>()).Sample((text, kind) =>
            TypedNumber.Read(text, kind, Units.BaseOf(kind), new PlausibleSpan(0, 1)) is not null);

    [Fact]
    public void Any_text_of_number_characters_gets_an_answer() =>
        Gen.Char["0123456789.,'- +eEkKmMRVΩ°/"].Array[1, 12].Select(chars => new string(chars)).Sample(text =>
            TypedNumber.Read(text, QuantityKind.Resistance, Units.Ohm, new PlausibleSpan(0, 100)) is not
                TypedNumber.Certain { BaseValue: < 0 or double.NaN or double.PositiveInfinity });

    private static string Written(decimal number, int decimals, (char Decimal, string Group) convention)
    {
        var format = new NumberFormatInfo
        {
            NumberDecimalSeparator = convention.Decimal.ToString(),
            NumberGroupSeparator = convention.Group,
        };
        return number.ToString((convention.Group.Length == 0 ? "F" : "N") + decimals, format);
    }

    private static bool Same(double one, double other) => Math.Abs(one - other) <= 1e-12 * Math.Abs(other);
}
