#include "ui/consent/signed_paper.h"

#include <QColorSpace>
#include <QCoreApplication>
#include <QPainter>

#include "indexer/sheet/consent_sheet.h"
#include "ui/consent/consent_words.h"
#include "ui/painter/paint.h"
#include "ui/painter/paint_page.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr double signed_dpi = 150;

QString signed_words(const char* text) {
    return QCoreApplication::translate("signed_paper", text);
}

std::string answer(Use use, const std::vector<SaidOfUses>& all) {
    QString words = signed_words(QT_TRANSLATE_NOOP("signed_paper", "nothing ticked, so no"));
    for (const SaidOfUses& said : all) {
        if (std::ranges::find(said.uses, use) == said.uses.end()) continue;
        //: an answer to whether photos may be shown
        words = said.entry.said == ConsentSaid::granted
                    ? signed_words(QT_TRANSLATE_NOOP("signed_paper", "yes, %1"))
                          .arg(how_far_words(said.entry))
                    : signed_words(QT_TRANSLATE_NOOP("signed_paper", "no"));
    }
    //: a use, and the answer for it
    return to_utf8(signed_words(QT_TRANSLATE_NOOP("signed_paper", "%1: %2"))
                       .arg(from_utf8(use_on_form(use)), words));
}

std::string who_signed(const SignedForm& form) {
    const ConsentEntry& entry = form.said.front().entry;
    const bool guardian = entry.giver == ConsentGiver::guardian;
    QString words =
        signed_words(QT_TRANSLATE_NOOP("signed_paper", "Signed on the screen by %1, %2."))
            .arg(from_utf8(guardian ? entry.guardian : form.facts.client), shown(entry.said_on));
    if (guardian) {
        words += QLatin1Char(' ') +
                 signed_words(QT_TRANSLATE_NOOP("signed_paper", "Parent or guardian of %1."))
                     .arg(from_utf8(form.facts.client));
    }
    if (entry.age) {
        words += QLatin1Char(' ') +
                 signed_words(QT_TRANSLATE_NOOP("signed_paper", "Aged %1.")).arg(shown(*entry.age));
    }
    return to_utf8(words);
}

// The same day holds for all that was granted.
std::string how_long(const std::vector<SaidOfUses>& all) {
    std::optional<Date> until;
    for (const SaidOfUses& said : all) {
        if (said.entry.said == ConsentSaid::granted) until = said.entry.until;
    }
    if (!until) {
        return to_utf8(signed_words(QT_TRANSLATE_NOOP("signed_paper", "Until I take it back.")));
    }
    return to_utf8(
        signed_words(QT_TRANSLATE_NOOP("signed_paper", "Until %1, unless I take it back before."))
            .arg(shown(*until)));
}

// Where there was something to fill in, what was filled in.
std::vector<FormBlock> answered(const SignedForm& form) {
    std::vector<FormBlock> blocks;
    for (const FormBlock& block : form.blocks) {
        if (block.part == FormPart::uses) {
            for (const Use use : all_uses) {
                blocks.push_back({FormPart::paragraph, answer(use, form.said)});
            }
        } else if (block.part == FormPart::until) {
            blocks.push_back({FormPart::paragraph, how_long(form.said)});
        } else if (block.part != FormPart::sign && !block.by_hand) {
            blocks.push_back(block);
        }
    }
    blocks.push_back({FormPart::paragraph, who_signed(form)});
    return blocks;
}

}  // namespace

QImage signed_picture(const SignedForm& form) {
    const auto ruler = make_text_ruler();
    const Document document = consent_sheet(answered(form), form.facts, *ruler, Paper::a4);
    std::vector<QImage> parts;
    for (const Page& page : document.pages) parts.push_back(page_image(page, {}, signed_dpi));
    const int width = parts.front().width();
    parts.push_back(form.signature.scaledToWidth(width / 2, Qt::SmoothTransformation));
    int height = 0;
    for (const QImage& part : parts) height += part.height();
    QImage picture(width, height, QImage::Format_RGB32);
    picture.setColorSpace(QColorSpace::SRgb);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    int top = 0;
    for (const QImage& part : parts) {
        painter.drawImage((width - part.width()) / 2, top, part);
        top += part.height();
    }
    return picture;
}

}  // namespace quarterturn
