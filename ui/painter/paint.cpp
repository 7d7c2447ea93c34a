#include "ui/painter/paint.h"
