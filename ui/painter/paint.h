#pragma once
// Draws a document's pages with Qt. A QGuiApplication must exist. Photos are decoded no larger than
// they are drawn. All functions throw DiskError.

#include <memory>
#include <vector>

#include "indexer/disk/file_system.h"
#include "indexer/image/decode.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

inline constexpr int print_dpi = 300;

std::unique_ptr<TextRuler> make_text_ruler();

// Real text, pictures at print_dpi, sRGB.
void write_pdf(const Document& document, Decoder& decoder, FileSystem& disk, const Path& file);

// PNG or JPEG by the file's ending; from the second page on, "-2", "-3" … is put before the ending.
// Answers the files that were written.
std::vector<Path> write_pictures(const Document& document, Decoder& decoder, FileSystem& disk,
                                 const Path& file);

}  // namespace quarterturn
