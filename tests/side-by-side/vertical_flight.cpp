// The vertical flight of vertical_flight.py by the library's own method: embedded Runge-Kutta pair of order 5(4) with events on its dense output, step
// control rounded to sixteen lengths an octave, the air's pressure by its binomial series. For the question how far the library is from C++:
//
//     g++ -O2 -std=c++17 -o out/vertical_flight tests/side-by-side/vertical_flight.cpp && out/vertical_flight
//
// The library's benchmark command side-by-side builds and runs it where there is a compiler. Unknowns are counted at compile time here, as a C++
// programmer would have it.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstring>
#include <limits>

namespace {

constexpr double R = 287.05287, Gamma = 1.4, G = 9.80665, Rho = 1000, Pi = 3.14159265358979323846;
constexpr double Volume = 2.5e-3, WaterShare = 0.32, GaugePa = 35e5, StartK = 293.15, SeaPa = 101325, SeaK = 288.15, Lapse = 0.0065;
constexpr double Throat = 0.013, Bore = 0.095, DryKg = 1.05, Cd = 0.33, EndRatio = 1.001, Relative = 1e-6, Rest = 1e-12, LongestS = 36000;
constexpr double BoreM2 = Pi / 4 * Bore * Bore, JetM2 = 0.97 * (Pi / 4 * Throat * Throat), AirM2 = 0.95 * (Pi / 4 * Throat * Throat);

struct Air {
    double exponent, share, b2, b3, b4, b5, b6, b7, b8;

    Air() {
        const double n = exponent = G / (R * Lapse);
        share = Lapse / SeaK;
        b2 = -(n - 1) / 2, b3 = b2 * -(n - 2) / 3, b4 = b3 * -(n - 3) / 4, b5 = b4 * -(n - 4) / 5;
        b6 = b5 * -(n - 5) / 6, b7 = b6 * -(n - 6) / 7, b8 = b7 * -(n - 7) / 8;
    }

    double pressure(double h, double &kelvin) const {
        kelvin = SeaK - Lapse * h;
        const double x = h * share;
        if (x > 0.04 || x < -0.04) return SeaPa * std::pow(1 - x, exponent);
        const double series = b2 + x * (b3 + x * (b4 + x * (b5 + x * (b6 + x * (b7 + x * b8)))));
        return SeaPa * (1 - exponent * x * (1 + x * series));
    }
};

struct Setup {
    Air air;
    double startPa = GaugePa + SeaPa, gasM3 = Volume * (1 - WaterShare), gasKg = startPa * gasM3 / (R * StartK);
    double loss = 1 - (JetM2 / BoreM2) * (JetM2 / BoreM2);
    double critical = std::pow(2 / (Gamma + 1), Gamma / (Gamma - 1));
    double flowFactor = AirM2 * std::sqrt(Gamma / R) * std::pow(2 / (Gamma + 1), (Gamma + 1) / (2 * (Gamma - 1)));
    double thrustFactor = AirM2 * 2 * std::pow(2 / (Gamma + 1), 1 / (Gamma - 1));

    double surroundings(double z, double v, double &drag) const {
        double kelvin;
        const double pressure = air.pressure(z, kelvin);
        drag = 0.5 * (pressure / (R * kelvin)) * Cd * BoreM2 * v * std::fabs(v);
        return pressure;
    }
};

struct Water {
    static constexpr int N = 3, Events = 4;
    const Setup &s;
    double fastest = 0;

    static bool terminal(int e) { return e != 3; }
    double gas(double volume) const { return s.startPa * std::pow(s.gasM3 / volume, Gamma); }

    void rates(const double *y, double *d) const {
        double drag;
        const double ambient = s.surroundings(y[0], y[1], drag), difference = gas(y[2]) - ambient;
        const double u = difference > 0 ? std::sqrt(2 * difference / (Rho * s.loss)) : 0;
        const double mass = DryKg + s.gasKg + Rho * (Volume - y[2]);
        d[0] = y[1];
        d[1] = (Rho * JetM2 * u * u - drag) / mass - G;
        d[2] = JetM2 * u;
    }

    double event(int e, const double *y, const double *d) const {
        double drag;
        switch (e) {
        case 0: return Volume - y[2];
        case 1: return gas(y[2]) - EndRatio * s.surroundings(y[0], y[1], drag);
        case 2: return y[1] + Rest;
        default: return d[1];
        }
    }

    void located(int, const double *y) { fastest = std::max(fastest, y[1]); }
};

struct Gas {
    static constexpr int N = 4, Events = 4;
    const Setup &s;
    double fastest = 0;

    static bool terminal(int e) { return e == 0 || e == 2; }
    static double pressure(const double *y) { return y[2] * R * y[3] / Volume; }

    double flow(double inside, double kelvin, double ambient, double &thrust) const {
        if (ambient <= s.critical * inside) {
            thrust = s.thrustFactor * inside - AirM2 * ambient;
            return s.flowFactor * inside / std::sqrt(kelvin);
        }
        if (!(ambient < inside)) {
            thrust = 0;
            return 0;
        }
        const double exitK = kelvin * std::pow(ambient / inside, (Gamma - 1) / Gamma);
        const double speed = std::sqrt(2 * Gamma / (Gamma - 1) * R * (kelvin - exitK));
        const double kgs = AirM2 * ambient / (R * exitK) * speed;
        thrust = kgs * speed;
        return kgs;
    }

    void rates(const double *y, double *d) const {
        double drag, thrust;
        const double ambient = s.surroundings(y[0], y[1], drag), kgs = flow(pressure(y), y[3], ambient, thrust);
        d[0] = y[1];
        d[1] = (thrust - drag) / (DryKg + y[2]) - G;
        d[2] = -kgs;
        d[3] = -(Gamma - 1) * y[3] * kgs / y[2];
    }

    double event(int e, const double *y, const double *d) const {
        double drag;
        switch (e) {
        case 0: return pressure(y) - EndRatio * s.surroundings(y[0], y[1], drag);
        case 1: return s.critical * pressure(y) - s.surroundings(y[0], y[1], drag);
        case 2: return y[1] + Rest;
        default: return d[1];
        }
    }

    void located(int e, const double *y) {
        if (e == 3) fastest = std::max(fastest, y[1]);
    }
};

struct Coast {
    static constexpr int N = 2, Events = 1;
    const Setup &s;
    double mass;

    static bool terminal(int) { return true; }

    void rates(const double *y, double *d) const {
        double drag;
        s.surroundings(y[0], y[1], drag);
        d[0] = y[1];
        d[1] = -drag / mass - G;
    }

    double event(int, const double *y, const double *) const { return y[1]; }
    void located(int, const double *) {}
};

double rounded(double step) {
    std::uint64_t bits;
    std::memcpy(&bits, &step, 8);
    bits &= ~((std::uint64_t{1} << 48) - 1);
    std::memcpy(&step, &bits, 8);
    return step;
}

struct End {
    double time;
    int event, evaluations;
};

template <class System> class Driver {
    static constexpr int N = System::N, E = System::Events;
    System &f;
    double k[7][N], c[5][N], trial[N], next[N];

    void state(double t0, double h, double t, double *y) const {
        const double x = (t - t0) / h, r = 1 - x;
        for (int i = 0; i < N; i++) y[i] = c[0][i] + x * (c[1][i] + r * (c[2][i] + x * (c[3][i] + r * c[4][i])));
    }

    void slope(double t0, double h, double t, double *d) const {
        const double x = (t - t0) / h, r = 1 - x;
        for (int i = 0; i < N; i++) {
            const double inner = c[3][i] + r * c[4][i], middle = c[2][i] + x * inner, outer = c[1][i] + r * middle;
            d[i] = (outer + x * (r * (inner - x * c[4][i]) - middle)) / h;
        }
    }

    // R. P. Brent, 1973, procedure zero.
    double locate(int e, double t0, double h, double from, double fa, double to, double fb) {
        if (fb == 0) return to;
        double a = from, b = to, cc = a, fc = fa, last = b - a, before = last, y[N], d[N];
        for (int evaluations = 0;; evaluations++) {
            if (std::fabs(fc) < std::fabs(fb)) {
                a = b, b = cc, cc = a;
                fa = fb, fb = fc, fc = fa;
            }
            const double close = 2 * 1.1e-16 * std::fabs(b), half = 0.5 * (cc - b);
            if (fb == 0 || std::fabs(half) <= close || evaluations >= 100) return b;
            if (std::fabs(before) < close || std::fabs(fa) <= std::fabs(fb)) {
                last = before = half;
            } else {
                double p, q;
                const double s = fb / fa;
                if (a == cc) {
                    p = 2 * half * s, q = 1 - s;
                } else {
                    const double u = fa / fc, r = fb / fc;
                    p = s * (2 * half * u * (u - r) - (b - a) * (r - 1));
                    q = (u - 1) * (r - 1) * (s - 1);
                }
                if (p > 0) q = -q;
                else p = -p;
                if (2 * p < std::min(3 * half * q - std::fabs(close * q), std::fabs(before * q))) {
                    before = last, last = p / q;
                } else {
                    last = before = half;
                }
            }
            a = b, fa = fb;
            b += std::fabs(last) > close ? last : std::copysign(close, half);
            state(t0, h, b, y);
            slope(t0, h, b, d);
            fb = f.event(e, y, d);
            if ((fb > 0) == (fc > 0)) cc = a, fc = fa, last = before = b - a;
        }
    }

    void attempt(double h, const double *y) {
        for (int i = 0; i < N; i++) trial[i] = y[i] + h * (1.0 / 5 * k[0][i]);
        f.rates(trial, k[1]);
        for (int i = 0; i < N; i++) trial[i] = y[i] + h * (3.0 / 40 * k[0][i] + 9.0 / 40 * k[1][i]);
        f.rates(trial, k[2]);
        for (int i = 0; i < N; i++) trial[i] = y[i] + h * (44.0 / 45 * k[0][i] - 56.0 / 15 * k[1][i] + 32.0 / 9 * k[2][i]);
        f.rates(trial, k[3]);
        for (int i = 0; i < N; i++)
            trial[i] = y[i] + h * (19372.0 / 6561 * k[0][i] - 25360.0 / 2187 * k[1][i] + 64448.0 / 6561 * k[2][i] - 212.0 / 729 * k[3][i]);
        f.rates(trial, k[4]);
        for (int i = 0; i < N; i++)
            trial[i] = y[i] + h * (9017.0 / 3168 * k[0][i] - 355.0 / 33 * k[1][i] + 46732.0 / 5247 * k[2][i] + 49.0 / 176 * k[3][i]
                - 5103.0 / 18656 * k[4][i]);
        f.rates(trial, k[5]);
        for (int i = 0; i < N; i++)
            next[i] = y[i] + h * (35.0 / 384 * k[0][i] + 500.0 / 1113 * k[2][i] + 125.0 / 192 * k[3][i] - 2187.0 / 6784 * k[4][i]
                + 11.0 / 84 * k[5][i]);
        f.rates(next, k[6]);
    }

public:
    explicit Driver(System &system) : f(system) {}

    End run(double t, double to, double *y, const double *absolute) {
        double before[E], after[E], where[E], there[N], bend[N];
        int steps = 0, evaluations = 2;
        f.rates(y, k[0]);
        for (int e = 0; e < E; e++) before[e] = f.event(e, y, k[0]);

        double stateNorm = 0, slopeNorm = 0, curvature = 0;
        for (int i = 0; i < N; i++) {
            const double scale = absolute[i] + Relative * std::fabs(y[i]);
            stateNorm += y[i] / scale * (y[i] / scale), slopeNorm += k[0][i] / scale * (k[0][i] / scale);
        }
        stateNorm = std::sqrt(stateNorm / N), slopeNorm = std::sqrt(slopeNorm / N);
        double first = stateNorm < 1e-5 || slopeNorm < 1e-5 ? 1e-6 : 0.01 * stateNorm / slopeNorm;
        first = std::min(first, to - t);
        for (int i = 0; i < N; i++) trial[i] = y[i] + first * k[0][i];
        f.rates(trial, k[1]);
        for (int i = 0; i < N; i++) {
            const double scaled = (k[1][i] - k[0][i]) / (absolute[i] + Relative * std::fabs(y[i]));
            curvature += scaled * scaled;
        }
        curvature = std::sqrt(curvature / N) / first;
        const double steepest = std::max(slopeNorm, curvature);
        const double second = steepest <= 1e-15 ? std::max(1e-6, first * 1e-3) : std::pow(0.01 / steepest, 0.2);
        double step = std::min(rounded(std::min(100 * first, second)), to - t), previous = -9.210340371976182;
        bool rejected = false;

        while (true) {
            if (++steps > 100000) return {t, -1, evaluations};
            const bool isLast = step >= (to - t) * (1 - 1e-12);
            const double h = isLast ? to - t : step;
            attempt(h, y);
            evaluations += 6;
            double sum = 0;
            for (int i = 0; i < N; i++) {
                const double error = h * (71.0 / 57600 * k[0][i] - 71.0 / 16695 * k[2][i] + 71.0 / 1920 * k[3][i] - 17253.0 / 339200 * k[4][i]
                    + 22.0 / 525 * k[5][i] - 1.0 / 40 * k[6][i]);
                const double scaled = error / (absolute[i] + Relative * std::max(std::fabs(y[i]), std::fabs(next[i])));
                sum += scaled * scaled;
            }
            const double error = std::sqrt(sum / N);
            if (!(error <= 1)) {
                step = rounded(h * std::max(0.2, 0.9 * std::pow(error, -0.17)));
                rejected = true;
                continue;
            }
            const double log = std::log(error);
            double factor = std::min(10.0, std::max(0.2, 0.9 * std::exp(0.04 * previous - 0.17 * log)));
            if (rejected) factor = std::min(1.0, factor);
            step = std::min(to - t, rounded(h * factor));
            previous = std::max(log, -9.210340371976182);
            rejected = false;

            double end = t + h;
            int crossed = 0;
            for (int e = 0; e < E; e++) {
                after[e] = f.event(e, next, k[6]);
                if (before[e] > 0 && after[e] <= 0) crossed |= 1 << e;
            }
            int terminal = -1;
            if (crossed) {
                for (int i = 0; i < N; i++) {
                    const double difference = next[i] - y[i], spline = h * k[0][i] - difference;
                    c[0][i] = y[i], c[1][i] = difference, c[2][i] = spline, c[3][i] = difference - h * k[6][i] - spline;
                    c[4][i] = h * (-12715105075.0 / 11282082432 * k[0][i] + 87487479700.0 / 32700410799 * k[2][i]
                        - 10690763975.0 / 1880347072 * k[3][i] + 701980252875.0 / 199316789632 * k[4][i]
                        - 1453857185.0 / 822651844 * k[5][i] + 69997945.0 / 29380423 * k[6][i]);
                }
                for (int e = 0; e < E; e++)
                    if (crossed & (1 << e)) where[e] = locate(e, t, h, t, before[e], end, after[e]);
                while (crossed && terminal < 0) {
                    int next_one = -1;
                    for (int e = 0; e < E; e++)
                        if ((crossed & (1 << e)) && (next_one < 0 || where[e] < where[next_one])) next_one = e;
                    state(t, h, where[next_one], there);
                    f.located(next_one, there);
                    if (System::terminal(next_one)) {
                        terminal = next_one, end = where[next_one];
                        std::copy(there, there + N, bend);
                    }
                    crossed &= ~(1 << next_one);
                }
                if (terminal >= 0) std::copy(bend, bend + N, next);
            }
            std::copy(next, next + N, y);
            t = end;
            if (terminal >= 0 || isLast) return {t, terminal, evaluations};
            std::copy(k[6], k[6] + N, k[0]);
            std::copy(after, after + E, before);
        }
    }
};

struct Flight {
    double apogee, time;
    int evaluations;
};

__attribute__((noinline)) Flight fly(const Setup &s) {
    Water water{s};
    double y[3] = {0, 0, s.gasM3}, allowed[3] = {Relative, Relative, Relative * s.gasM3};
    const End first = Driver<Water>(water).run(0, LongestS, y, allowed);
    Gas gas{s};
    double g[4] = {y[0], y[1], s.gasKg, water.gas(y[2]) * Volume / (R * s.gasKg)};
    double air[4] = {Relative, Relative, 1e-2 * Relative * s.gasKg, 100 * Relative};
    const End second = Driver<Gas>(gas).run(first.time, first.time + LongestS, g, air);
    Coast coast{s, DryKg + g[2]};
    double up[2] = {g[0], g[1]}, both[2] = {Relative, Relative};
    const End third = Driver<Coast>(coast).run(second.time, second.time + LongestS, up, both);
    return {up[0], third.time, first.evaluations + second.evaluations + third.evaluations};
}

} // namespace

int main() {
    const Setup setup;
    Flight flight = fly(setup);
    double best = std::numeric_limits<double>::infinity();
    for (int round = 0; round < 600; round++) {
        const auto start = std::chrono::steady_clock::now();
        for (int i = 0; i < 40; i++) flight = fly(setup);
        const std::chrono::duration<double, std::micro> took = std::chrono::steady_clock::now() - start;
        best = std::min(best, took.count() / 40);
    }
    std::printf("{\"apogee\": %.17g, \"time\": %.17g, \"evaluations\": %d, \"microseconds\": %.3f}\n", flight.apogee, flight.time, flight.evaluations, best);
}
