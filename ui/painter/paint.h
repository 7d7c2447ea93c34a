#pragma once
// Draws a document's pages with Qt. A QGuiApplication must exist. Photos are decoded no larger than
// they are drawn. A photo that cannot be read or decoded leaves a frame that says so, and the rest
// goes on; what cannot be written throws DiskError.

#include <QByteArray>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "indexer/disk/file_system.h"
#include "indexer/image/decode.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

std::unique_ptr<TextRuler> make_text_ruler();

struct Written {
    std::vector<Path> files;
    std::vector<std::string> problems;  // a sentence for each photo that could not be shown
    std::vector<Path> older{};          // pictures of further pages that lay there before
};

// That the older ones are no pages of this document; empty when there are none.
std::string words_of_older(const Written& written);

struct DrawnPdf {
    QByteArray bytes;
    std::vector<std::string> problems;  // as in Written

    std::span<const std::byte> span() const;
};

// Real text, pictures at print_dpi, sRGB.
DrawnPdf draw_pdf(const Document& document, Decoder& decoder, FileSystem& disk);

// The same into a file; what is there is written over.
Written write_pdf(const Document& document, Decoder& decoder, FileSystem& disk, const Path& file);

// "png" or "jpeg" by the file's ending, whatever its case; empty for any other ending.
std::string picture_format(const Path& file);

// Where write_pictures puts the number-th page, counted from 1: the file itself, and from the
// second page on "-2", "-3" … is put before the ending.
Path picture_file(const Path& file, std::size_t number);

// PNG or JPEG by the file's ending, a file for each page; what is there is written over.
// 300 dots per inch, tagged sRGB. Pictures of a longer document that lie there under the names of
// further pages may be hers for another purpose: they are named and stay.
// Throws std::invalid_argument for any other ending.
Written write_pictures(const Document& document, Decoder& decoder, FileSystem& disk,
                       const Path& file);

}  // namespace quarterturn
