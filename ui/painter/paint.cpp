#include "ui/painter/paint.h"

#include <QBuffer>
#include <QPdfWriter>
#include <cmath>
#include <stdexcept>

#include "ui/painter/exact_paper.h"
#include "ui/painter/page_file.h"
#include "ui/painter/paint_page.h"
#include "ui/painter/text.h"

namespace quarterturn {
namespace {

constexpr double dots_per_point = dots_per_inch / 72.0;

std::span<const std::byte> bytes_of(const QByteArray& bytes) {
    return std::as_bytes(std::span(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

void append(std::vector<std::string>& all, std::vector<std::string> more) {
    all.insert(all.end(), std::make_move_iterator(more.begin()),
               std::make_move_iterator(more.end()));
}

void paint_pdf_pages(QPdfWriter& writer, const Document& document, Decoder& decoder,
                     FileSystem& disk, std::vector<std::string>& problems) {
    QPainter painter;
    for (const Page& page : document.pages) {
        const auto pictures = pictures_of(page, print_dpi, decoder, disk);
        writer.setPageLayout(page_layout(page.size));
        if (!painter.isActive())
            painter.begin(&writer);
        else
            writer.newPage();
        painter.save();
        painter.translate(0, -points_below_top(page.size) * dots_per_point);
        paint_page(painter, page, pictures);
        painter.restore();
        append(problems, problems_of(page, pictures));
    }
}

}  // namespace

std::string picture_format(const Path& file) {
    std::string ending = file.extension().string();
    for (char& c : ending) c = (c >= 'A' && c <= 'Z') ? static_cast<char>(c - 'A' + 'a') : c;
    if (ending == ".png") return "png";
    if (ending == ".jpg" || ending == ".jpeg") return "jpeg";
    return {};
}

Path picture_file(const Path& file, std::size_t number) {
    if (number == 1) return file;
    Path name = file.stem();
    name += "-";
    name += std::to_string(number);
    name += file.extension();
    return file.parent_path() / name;
}

std::span<const std::byte> DrawnPdf::span() const {
    return bytes_of(bytes);
}

DrawnPdf draw_pdf(const Document& document, Decoder& decoder, FileSystem& disk) {
    DrawnPdf pdf;
    QBuffer buffer(&pdf.bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);  // says that its colours are sRGB
        writer.setResolution(dots_per_inch);
        writer.setTitle(QString::fromStdString(document.title));
        writer.setCreator("Quarterturn");
        paint_pdf_pages(writer, document, decoder, disk, pdf.problems);
    }
    set_exact_papers(pdf.bytes, document.pages);
    return pdf;
}

Written write_pdf(const Document& document, Decoder& decoder, FileSystem& disk, const Path& file) {
    DrawnPdf pdf = draw_pdf(document, decoder, disk);
    replace_file(disk, file, pdf.span());
    return {{file}, std::move(pdf.problems)};
}

Written write_pictures(const Document& document, Decoder& decoder, FileSystem& disk,
                       const Path& file) {
    if (picture_format(file).empty()) {
        throw std::invalid_argument(
            "A picture's name ends in .png, .jpg or .jpeg: " + file.string() + " does not.");
    }
    const PageFormat format = picture_format(file) == "png" ? PageFormat::png : PageFormat::jpeg;
    Written written;
    for (const Page& page : document.pages) {
        const auto pictures = pictures_of(page, print_dpi, decoder, disk);
        const Path target = picture_file(file, written.files.size() + 1);
        replace_file(disk, target, page_file(page, pictures, format));
        written.files.push_back(target);
        append(written.problems, problems_of(page, pictures));
    }
    for (std::size_t next = written.files.size() + 1; disk.exists(picture_file(file, next));
         ++next) {
        written.older.push_back(picture_file(file, next));
    }
    return written;
}

std::string words_of_older(const Written& written) {
    if (written.older.empty()) return {};
    std::string names;
    for (const Path& file : written.older) {
        names += (names.empty() ? "" : ", ") + file.filename().string();
    }
    return "Older pages of a longer document still lie beside it and are not part of this one: " +
           names + ". Delete them if you no longer need them.";
}

}  // namespace quarterturn
