#pragma once
// Photos of the same thing taken moments apart, and photos that look alike.

#include <span>
#include <vector>

#include "indexer/record/photo.h"

namespace quarterturn {

// How many of the 64 bits differ.
int bits_apart(Fingerprint one, Fingerprint other);

// Groups of two or more photos of one device that follow each other within seconds and look alike;
// in each group the sharpest comes first.
std::vector<std::vector<PhotoId>> find_bursts(std::span<const Photo> photos);

// Groups of two or more photos that look alike, whenever they were taken; sharpest first.
std::vector<std::vector<PhotoId>> find_near_duplicates(std::span<const Photo> photos);

}  // namespace quarterturn
