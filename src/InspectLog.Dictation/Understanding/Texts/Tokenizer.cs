using System.Collections.Frozen;
using System.Globalization;
using InspectLog.Dictation.Understanding.Language;

namespace InspectLog.Dictation.Understanding.Texts;

/// <summary>Cuts a text into tokens, whether a person typed it or a speech model wrote it.</summary>
internal sealed partial class Tokenizer(LanguageFile file, Stemmer stems)
{
    private readonly FrozenDictionary<string, string> _contractions = file.Contractions.ToFrozenDictionary(StringComparer.Ordinal);
    private readonly FrozenDictionary<char, string> _signs = file.Signs.ToFrozenDictionary(sign => sign.Key[0], sign => sign.Value);
    private readonly FrozenDictionary<char, string> _afterFigures = file.AfterFigures.ToFrozenDictionary(sign => sign.Key[0], sign => sign.Value);
    private readonly FrozenDictionary<string, string> _beforeFigures = file.BeforeFigures.ToFrozenDictionary(StringComparer.Ordinal);
    private readonly FrozenSet<string> _fillers = file.Fillers.ToFrozenSet(StringComparer.Ordinal);
    private readonly string _minus = file.Numbers.Minus[0];

    /// <summary>The tokens of a text, hesitations left out.</summary>
    public IReadOnlyList<Token> Cut(string text) => new Cutting(this, text).Tokens();

    /// <summary>The stems of a phrase.</summary>
    public string[] StemsOf(string phrase) => [.. Cut(phrase).Select(token => token.Stem)];

    private sealed partial class Cutting(Tokenizer words, string text)
    {
        private readonly List<Token> _tokens = [];
        private int _at;

        public List<Token> Tokens()
        {
            while (_at < text.Length)
            {
                Next();
            }

            return _tokens;
        }

        private void Next()
        {
            var c = text[_at];
            if (char.IsAsciiDigit(c) || c == '.' && char.IsAsciiDigit(Peek(1)) && !char.IsLetterOrDigit(Peek(-1)))
            {
                Figures();
            }
            else if (words._signs.TryGetValue(c, out var sign))
            {
                Add(sign[0] is >= '0' and <= '9' ? TokenKind.Figure : TokenKind.Word, sign, _at, ++_at);
            }
            else if (char.IsLetter(c))
            {
                Letters();
            }
            else if (IsApostrophe(c) && char.IsAsciiDigit(Peek(-1)) && char.IsLetter(Peek(1)) && !char.IsLetterOrDigit(Peek(2)) && words.Suffixes.TryGetValue($"'{Peek(1)}", out var said))
            {
                Add(TokenKind.Word, said, _at, _at += 2);
            }
            else
            {
                Mark(c);
            }
        }

        private char Peek(int ahead) => _at + ahead >= 0 && _at + ahead < text.Length ? text[_at + ahead] : '\0';

        private void Letters()
        {
            var start = _at;
            if (Acronym() is { } acronym)
            {
                Add(TokenKind.Word, acronym, start, _at);
                return;
            }

            while (char.IsLetter(Peek(0)) && !words._signs.ContainsKey(Peek(0)) || IsApostrophe(Peek(0)) && char.IsLetter(Peek(1)))
            {
                _at++;
            }

            var word = text[start.._at].ToLower(CultureInfo.InvariantCulture).Replace('’', '\'');
            if (words._beforeFigures.TryGetValue(word, out var count) && FigureAfterPoint())
            {
                Add(TokenKind.Word, count, start, ++_at);
            }
            else if (words._fillers.Contains(word))
            {
                _at += Peek(0) == ',' ? 1 : 0;
            }
            else
            {
                Word(word, start);
            }
        }

        private void Word(string word, int start)
        {
            if (words._contractions.TryGetValue(word, out var parts))
            {
                foreach (var part in parts.Split(' '))
                {
                    Add(TokenKind.Word, part, start, _at);
                }

                return;
            }

            foreach (var (suffix, said) in words.Suffixes)
            {
                if (word.Length > suffix.Length && word.EndsWith(suffix, StringComparison.Ordinal))
                {
                    Add(TokenKind.Word, word[..^suffix.Length], start, _at - suffix.Length);
                    Add(TokenKind.Word, said, _at - suffix.Length, _at);
                    return;
                }
            }

            Add(TokenKind.Word, word.Replace("'", "", StringComparison.Ordinal), start, _at);
        }

        // "T.D.C.", "p.m."
        private string? Acronym()
        {
            var end = _at;
            var letters = "";
            while (end + 1 < text.Length && char.IsLetter(text[end]) && text[end + 1] == '.')
            {
                letters += char.ToLower(text[end], CultureInfo.InvariantCulture);
                end += 2;
            }

            if (letters.Length < 2)
            {
                return null;
            }

            _at = end;
            return letters;
        }

        private bool FigureAfterPoint()
        {
            var ahead = 1;
            while (Peek(ahead) == ' ')
            {
                ahead++;
            }

            return Peek(0) == '.' && char.IsAsciiDigit(Peek(ahead));
        }

        private void Mark(char c)
        {
            var spaced = char.IsWhiteSpace(Peek(-1)) || char.IsWhiteSpace(Peek(1)) || Peek(1) == '-';
            var digitNext = char.IsAsciiDigit(Peek(1)) || Peek(1) == '.' && char.IsAsciiDigit(Peek(2));
            if (c is '-' or '–' or '−' && char.IsAsciiDigit(Peek(-1)) && digitNext)
            {
                Add(TokenKind.Word, "-", _at, _at + 1);
            }
            else if (c is '-' or '–' or '−' && digitNext && !char.IsLetterOrDigit(Peek(-1)))
            {
                Add(TokenKind.Word, words._minus, _at, _at + 1);
            }
            else if (words._afterFigures.TryGetValue(c, out var unit) && _tokens is [.., { Kind: TokenKind.Figure } figure] && figure.End == _at)
            {
                Add(TokenKind.Word, unit, _at, _at + 1);
            }
            else if (c switch
            {
                '.' or ',' or ';' or ':' or '!' or '?' => c,
                '…' or '\n' => '.',
                '—' or '(' or ')' or '[' or ']' => ',',
                '-' or '–' when spaced => ',',
                _ => '\0',
            } is var mark and not '\0')
            {
                Add(TokenKind.Mark, mark.ToString(), _at, _at + 1);
            }

            _at++;
        }

        private void Add(TokenKind kind, string word, int start, int end)
        {
            var spelt = kind == TokenKind.Word ? words.Stems.Spelling(word) : word;
            var glued = _tokens.Count > 0 && _tokens[^1].End == start;
            _tokens.Add(new(kind, spelt, kind == TokenKind.Word ? words.Stems.StemOf(spelt) : spelt, start, end, glued) { Capital = end == start + 1 && char.IsUpper(text[start]) });
        }

        private static bool IsApostrophe(char c) => c is '\'' or '’';
    }

    private Stemmer Stems => stems;

    private IReadOnlyDictionary<string, string> Suffixes => file.Suffixes;
}
