using System.Text;

namespace NotebookKit.Interactive.Html;

/// <summary>A formula in TeX as one readable line, for front-ends that draw no formulae: "σ_h = p r/t".</summary>
internal static class PlainFormula
{
    private static readonly Dictionary<string, string> Symbols = new(StringComparer.Ordinal)
    {
        ["alpha"] = "α", ["beta"] = "β", ["gamma"] = "γ", ["delta"] = "δ", ["epsilon"] = "ε", ["varepsilon"] = "ε", ["zeta"] = "ζ",
            ["eta"] = "η",
        ["theta"] = "θ", ["vartheta"] = "ϑ", ["kappa"] = "κ", ["lambda"] = "λ", ["mu"] = "μ", ["nu"] = "ν", ["xi"] = "ξ", ["pi"] = "π",
            ["rho"] = "ρ",
        ["sigma"] = "σ", ["tau"] = "τ", ["phi"] = "φ", ["varphi"] = "φ", ["chi"] = "χ", ["psi"] = "ψ", ["omega"] = "ω",
        ["Gamma"] = "Γ", ["Delta"] = "Δ", ["Theta"] = "Θ", ["Lambda"] = "Λ", ["Xi"] = "Ξ", ["Pi"] = "Π", ["Sigma"] = "Σ", ["Phi"] = "Φ",
            ["Psi"] = "Ψ", ["Omega"] = "Ω",
        ["cdot"] = " · ", ["times"] = " × ", ["pm"] = "±", ["le"] = " ≤ ", ["leq"] = " ≤ ", ["ge"] = " ≥ ", ["geq"] = " ≥ ",
            ["ne"] = " ≠ ", ["approx"] = " ≈ ",
        ["infty"] = "∞", ["int"] = "∫", ["sum"] = "Σ", ["partial"] = "∂", ["degree"] = "°", ["circ"] = "°", ["to"] = " → ",
            ["rightarrow"] = " → ",
        ["quad"] = "  ", ["qquad"] = "   ", ["ldots"] = "…", ["dots"] = "…", ["propto"] = " ∝ ", ["sim"] = " ~ ", ["ell"] = "ℓ",
            ["prime"] = "′", ["ll"] = " ≪ ", ["gg"] = " ≫ ",
    };

    private static readonly Dictionary<string, char> Accents = new(StringComparer.Ordinal)
    {
        ["dot"] = '\u0307', ["ddot"] = '\u0308', ["bar"] = '\u0304', ["overline"] = '\u0304', ["hat"] = '\u0302', ["tilde"] = '\u0303',
            ["vec"] = '\u20D7',
    };

    public static string From(string tex)
    {
        var reader = new Reader(tex);
        var text = reader.Group(stopAtBrace: false);
        return string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    private sealed class Reader(string tex)
    {
        private int _at;

        public string Group(bool stopAtBrace)
        {
            var text = new StringBuilder();
            while (_at < tex.Length)
            {
                if (tex[_at] == '}')
                {
                    _at++;
                    if (stopAtBrace) break;
                    continue;
                }
                text.Append(Next());
            }
            return text.ToString();
        }

        private string Next()
        {
            var c = tex[_at++];
            return c switch
            {
                '\\' => Command(),
                '{' => Group(stopAtBrace: true),
                '_' => Script("_"),
                '^' => Script("^"),
                '-' => "−",
                '~' or '&' => " ",
                _ => c.ToString(),
            };
        }

        private string Command()
        {
            if (_at >= tex.Length) return "";
            if (!char.IsLetter(tex[_at]))
            {
                var mark = tex[_at++];
                return mark is ',' or ';' or ':' or ' ' or '\\' ? " " : mark == '!' ? "" : mark.ToString();
            }
            var start = _at;
            while (_at < tex.Length && char.IsLetter(tex[_at])) _at++;
            var name = tex[start.._at];
            // TeX takes the space after a command as its end, not as a space.
            while (_at < tex.Length && tex[_at] == ' ') _at++;
            if (Symbols.TryGetValue(name, out var symbol)) return symbol;
            if (Accents.TryGetValue(name, out var accent)) return Argument() + accent;
            return name switch
            {
                "frac" or "dfrac" or "tfrac" => Fraction(),
                "sqrt" => "√" + Bracketed(Argument(), always: true),
                "left" or "right" or "big" or "Big" or "displaystyle" => "",
                "mathrm" or "text" or "textrm" or "mathbf" or "mathit" or "operatorname" => Argument(),
                _ => name + " ",
            };
        }

        private string Fraction()
        {
            var top = Argument();
            var bottom = Argument();
            return $"{Bracketed(top)}/{Bracketed(bottom)}";
        }

        private string Script(string mark)
        {
            var inner = Argument();
            return mark == "^" && inner is "2" ? "²" : mark == "^" && inner is "3" ? "³" : mark == "^" && inner is "°" ? "°" : mark
                + Bracketed(inner);
        }

        private string Argument()
        {
            while (_at < tex.Length && tex[_at] == ' ') _at++;
            return _at >= tex.Length ? "" : Next().Trim();
        }

        // Letters, digits and their marks need no bracket; a sum or a product does.
        private static string Bracketed(string text, bool always = false) =>
            !always && text.All(ch => char.IsLetterOrDigit(ch) || ch is '_' or '.' or ',' or '²' or '³' or '∞'
                || char.GetUnicodeCategory(ch) == System.Globalization.UnicodeCategory.NonSpacingMark)
                ? text
                : $"({text})";
    }
}
