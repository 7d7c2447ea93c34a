#pragma once
// What was signed on the screen, as one picture: the wording as it was shown, the answers, and the
// signature below.

#include <QImage>

#include "indexer/looks/consent_form.h"
#include "indexer/looks/consents.h"

namespace quarterturn {

struct SignedForm {
    std::vector<FormBlock> blocks;  // as they were shown
    FormFacts facts;
    std::vector<SaidOfUses> said;
    QImage signature;
};

// On white, sRGB, 150 dots per inch: the pages one below the other. Needs a QGuiApplication.
QImage signed_picture(const SignedForm& form);

}  // namespace quarterturn
