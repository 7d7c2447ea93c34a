#pragma once
// Photos of the same thing taken moments apart, and photos that look alike.

#include <chrono>
#include <span>
#include <vector>

#include "indexer/record/photo.h"

namespace quarterturn {

// Two seconds: a held button gives several photos a second, and a camera may write whole seconds
// only. Common practice.
inline constexpr std::chrono::seconds burst_gap{2};
// Of 64 bits. Chosen by measurement on the demo photos: the members of a burst differ in at most 2
// bits, two angles of one look in 10 or more.
inline constexpr int burst_bits = 8;
// Of 64 bits. Chosen by measurement on the demo photos: the same shot taken again differs in 0 to 5
// and more, another stage from the same angle in 7 or more.
inline constexpr int near_duplicate_bits = 5;

// How many of the 64 bits differ.
int bits_apart(Fingerprint one, Fingerprint other);

// Groups of two or more photos of one device that follow each other within `burst_gap` and look
// alike, each like the one before it; in each group the sharpest comes first, a flawed one after
// every unflawed one. Photos of an unknown device or moment are in no burst.
std::vector<std::vector<PhotoId>> find_bursts(std::span<const Photo> photos);

// Groups of two or more photos that look alike, whenever they were taken, each like one other in
// its group; sharpest first as above. A fingerprint of 0 was never measured and is like no other.
std::vector<std::vector<PhotoId>> find_near_duplicates(std::span<const Photo> photos);

}  // namespace quarterturn
