"""The numbers of src/measurement/statistics/random.ts by another language: writes random-numbers.json beside it.

SplitMix64 fills the state of xoshiro128**; 53 bits of two outputs make a uniform number; Karney's algorithm N makes
normal ones. As a check of this script, SplitMix64 and xoshiro128** are held to outputs that are known of them (from
memory): of the seed 1234567, and of the state 1, 2, 3, 4.
"""

import json
import pathlib

WORD, LONG = (1 << 32) - 1, (1 << 64) - 1


def splitmix64(seed):
    while True:
        seed = (seed + 0x9E3779B97F4A7C15) & LONG
        z = seed
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9 & LONG
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB & LONG
        yield z ^ (z >> 31)


def rotl(x, k):
    return (x << k | x >> (32 - k)) & WORD


def xoshiro128(s):
    s = list(s)
    while True:
        yield rotl(s[1] * 5 & WORD, 7) * 9 & WORD
        t = s[1] << 9 & WORD
        s[2] ^= s[0]
        s[3] ^= s[1]
        s[1] ^= s[2]
        s[0] ^= s[3]
        s[2] ^= t
        s[3] = rotl(s[3], 11)


def bits_of(seed):
    words = splitmix64(seed)
    first, second = next(words), next(words)
    return xoshiro128([first & WORD, first >> 32, second & WORD, second >> 32])


def uniforms(seed):
    bits = bits_of(seed)
    while True:
        high, low = next(bits), next(bits)
        yield ((high >> 5) << 26 | low >> 6) / 2**53


def normals(seed):
    u = uniforms(seed)

    def trial(x, q):
        n = 0
        while True:
            z = next(u)
            if not z < x or (q < 1 and not next(u) < q):
                return n % 2 == 0
            x, n = z, n + 1

    while True:
        k = 0
        while trial(0.5, 1):
            k += 1
        if not all(trial(0.5, 1) for _ in range(k * (k - 1))):
            continue
        x = next(u)
        if not all(trial(x, (2 * k + x) / (2 * k + 2)) for _ in range(k + 1)):
            continue
        yield k + x if next(u) < 0.5 else -(k + x)


def first(count, numbers):
    return [next(numbers) for _ in range(count)]


assert first(2, splitmix64(1234567)) == [6457827717110365317, 3203168211198807973]
assert first(4, xoshiro128([1, 2, 3, 4])) == [11520, 0, 5927040, 70819200]

rows = [
    {"seed": seed, "uniform": first(5, uniforms(seed)), "normal": first(20, normals(seed))}
    for seed in (0, 1, 2, 20260101, 2**53 - 1)
]
pathlib.Path(__file__).with_suffix(".json").write_text(json.dumps(rows, indent=1) + "\n")
