// SPDX-License-Identifier: Apache-2.0
#define CATCH_CONFIG_MAIN
#include SNUGLINE_CATCH_HEADER
