using System.Globalization;

namespace InspectLog.Paper.Blocks;

/// <summary>Reads paths as SVG writes them (W3C SVG 1.1, 8.3): moves, lines, cubic curves and arcs, absolute and relative.
/// Pure.</summary>
public sealed class PathReader
{
    private readonly string _path;
    private readonly List<Step> _steps = [];
    private int _at;
    private Spot _pen;
    private Spot _down;

    private PathReader(string path) => _path = path;

    /// <summary>The steps of a path.</summary>
    /// <exception cref="FormatException">It is none, or has commands other than those above.</exception>
    public static IReadOnlyList<Step> Read(string path)
    {
        var reader = new PathReader(path);
        reader.ReadAll();
        return reader._steps;
    }

    private void ReadAll()
    {
        var command = ' ';
        while (SkipTo() is { } next)
        {
            if (char.IsAsciiLetter(next))
            {
                (command, _at) = (next, _at + 1);
            }

            Take(command);

            // Further numbers after a move are lines.
            command = command switch { 'm' => 'l', 'M' => 'L', _ => command };
        }
    }

    private void Take(char command)
    {
        var from = char.IsAsciiLetterLower(command) ? _pen : default;
        switch (char.ToLowerInvariant(command))
        {
            case 'm':
                _down = _pen = Spot(from);
                _steps.Add(new Step.Move(_pen));
                break;
            case 'l':
                LineTo(Spot(from));
                break;
            case 'h':
                LineTo(new(from.X + Number(), _pen.Y));
                break;
            case 'v':
                LineTo(new(_pen.X, from.Y + Number()));
                break;
            case 'c':
                _steps.Add(new Step.Curve(Spot(from), Spot(from), _pen = Spot(from)));
                break;
            case 'a':
                var (x, y, turn, large, sweep, to) = (Number(), Number(), Number(), Flag(), Flag(), Spot(from));
                _steps.AddRange(Arc.Of(_pen, to, x, y, turn, large, sweep));
                _pen = to;
                break;
            case 'z':
                _steps.Add(new Step.Close());
                _pen = _down;
                break;
            default:
                throw new FormatException($"No command of a path that is known here: {command}");
        }
    }

    private void LineTo(Spot to)
    {
        _pen = to;
        _steps.Add(new Step.Line(to));
    }

    private char? SkipTo()
    {
        while (_at < _path.Length && (char.IsWhiteSpace(_path[_at]) || _path[_at] == ','))
        {
            _at++;
        }

        return _at < _path.Length ? _path[_at] : null;
    }

    private Spot Spot(Spot from) => new(from.X + Number(), from.Y + Number());

    /// <summary>A flag is one digit, and the next number may follow without a space.</summary>
    private bool Flag() => SkipTo() switch
    {
        '0' => _at++ < 0,
        '1' => _at++ >= 0,
        _ => throw new FormatException("No flag of an arc."),
    };

    private double Number()
    {
        SkipTo();
        var start = _at;
        if (_at < _path.Length && _path[_at] is '-' or '+')
        {
            _at++;
        }

        for (var hasPoint = false; _at < _path.Length && (char.IsAsciiDigit(_path[_at]) || (_path[_at] == '.' && !hasPoint)); _at++)
        {
            hasPoint |= _path[_at] == '.';
        }

        return double.TryParse(_path.AsSpan(start, _at - start), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new FormatException($"No number at {start} of the path {_path}");
    }
}
