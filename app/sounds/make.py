#!/usr/bin/env python3
"""make.py FILE: makes the sound of a timer that has ended, three soft strokes of a small bell, as
a wave file (16 bits, one channel, 22050 samples a second)."""

import math
import struct
import sys
import wave

RATE = 22050
STROKES = (0.0, 0.28, 0.56)  # seconds
LENGTH = 1.5
PARTIALS = ((1.0, 1.0), (2.76, 0.42), (5.4, 0.16))  # of a bar that is struck: pitch, loudness
PITCH = 880.0


def at(time):
    value = 0.0
    for begun in STROKES:
        since = time - begun
        if since < 0:
            continue
        attack = min(1.0, since / 0.004)
        for pitch, loudness in PARTIALS:
            fading = math.exp(-since * (4.5 + 2.2 * pitch))
            value += attack * loudness * fading * math.sin(2 * math.pi * PITCH * pitch * since)
    return value


samples = [at(i / RATE) for i in range(int(LENGTH * RATE))]
loudest = max(abs(sample) for sample in samples)
with wave.open(sys.argv[1], "wb") as file:
    file.setnchannels(1)
    file.setsampwidth(2)
    file.setframerate(RATE)
    file.writeframes(b"".join(struct.pack("<h", int(29000 * s / loudest)) for s in samples))
